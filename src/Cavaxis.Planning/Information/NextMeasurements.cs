using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;

namespace Cavaxis.Planning.Information;

/// <summary>Values every measurement that is still missing, or was taken with a large error, for one combination of devices.</summary>
internal sealed class NextMeasurements(PlanningContext context)
{
    /// <summary>Readings are simulated with their own stream, apart from the anatomies.</summary>
    private const ulong ReadingStream = 0x5EED_0F_4EAD;

    /// <summary>The value of each measurement, best first.</summary>
    /// <param name="combination">Devices and sides of the plan.</param>
    /// <param name="separationMm">Least distance between ports.</param>
    /// <returns>Measurements that tell something about this plan.</returns>
    public IReadOnlyList<MeasurementValue> Of(Combination combination, double separationMm)
    {
        SlotOption main = combination.Draining;
        SlotOption? back = combination.InRole(CannulaRole.VenousReturn);
        ulong[] marks = new ulong[(context.Samples.Count + 63) / 64];
        JointFit.Mark(main.Windows!, back?.Windows, context.Landmarks, separationMm, marks);
        double[] fits = Outcomes(combination, marks);
        (int[] suited, double[] depthsMm) = Depths(main.Windows!);
        List<MeasurementValue> values = [];
        foreach (UsualMeasurement usual in UsualMeasurement.All)
        {
            if (AlreadyKnown(usual))
            {
                continue;
            }

            double[] readings = Readings(usual);
            (double now, double after) = ValueOfInformation.ExpectedVariance((double[])readings.Clone(), (double[])fits.Clone());
            (double depthNow, double depthAfter) = depthsMm.Length < 100
                ? (0, 0)
                : ValueOfInformation.ExpectedVariance([.. suited.Select(i => readings[i])], (double[])depthsMm.Clone());
            double narrowing = now > 0 ? 1 - (after / now) : 0;
            double depthNarrowing = depthNow > 0 ? 1 - (depthAfter / depthNow) : 0;
            values.Add(new MeasurementValue(
                usual.Dimension,
                usual.How,
                usual.Sd,
                usual.Unit,
                now,
                after,
                narrowing,
                Math.Sqrt(depthNow) / 10,
                Math.Sqrt(depthAfter) / 10,
                depthNarrowing));
        }

        return [.. values
            .Where(value => value.FitNarrowing >= 0.01 || value.DepthNarrowing >= 0.01)
            .OrderByDescending(value => Math.Round(value.FitNarrowing * value.FitVarianceNow, 6))
            .ThenByDescending(value => value.DepthNarrowing)
            .ThenBy(value => value.Dimension)];
    }

    /// <summary>One where every port can be brought into its zone and no cannula is wider than the limit for its vessel, else zero.</summary>
    private double[] Outcomes(Combination combination, ulong[] marks)
    {
        double[] outcomes = new double[context.Samples.Count];
        for (int i = 0; i < outcomes.Length; i++)
        {
            outcomes[i] = (marks[i >> 6] >> (i & 63)) & 1;
        }

        foreach (SlotOption option in combination.Options)
        {
            if (AccessVessels.DimensionOf(AccessVessels.NameOf(option.Slot.Route), option.Side) is not AxisDimension dimension
                || option.Slot.Route == AccessRoute.AxillaryGraft)
            {
                continue;
            }

            bool vein = VenousEntry.Reaches(option.Slot.Route);
            double least = option.Cannula.OuterDiameterMm
                / context.Rules[vein ? LimitName.CannulaToVeinStop : LimitName.CannulaToArteryStop];
            ReadOnlySpan<double> diameters = context.Samples[dimension];
            for (int i = 0; i < outcomes.Length; i++)
            {
                outcomes[i] = diameters[i] < least ? 0 : outcomes[i];
            }
        }

        return outcomes;
    }

    private static (int[] Indices, double[] Depths) Depths(DepthWindows windows)
    {
        int[] indices = new int[windows.SuitableCount];
        int next = 0;
        for (int i = 0; i < windows.Low.Length; i++)
        {
            if (windows.Low[i] <= windows.High[i])
            {
                indices[next++] = i;
            }
        }

        return (indices, FitSummary.SuitableMiddles(windows));
    }

    private bool AlreadyKnown(UsualMeasurement usual) => context.Axis.IsMeasured(usual.Dimension)
        && context.Axis.Interval(usual.Dimension).Sd <= 1.2 * usual.Sd;

    private double[] Readings(UsualMeasurement usual)
    {
        double[] readings = context.Samples[usual.Dimension].ToArray();
        ulong key = context.Options.Seed ^ ReadingStream;
        for (int i = 0; i < readings.Length; i += 2)
        {
            (uint a, uint b, uint c, uint d) = Philox.Bits((uint)i, (uint)usual.Dimension, 0, 0, key);

            // Box and Muller: two normals from two uniforms in (0, 1].
            double radius = Math.Sqrt(-2 * Math.Log((((ulong)a << 20 ^ b) + 1.0) / (1UL << 52)));
            (double sin, double cos) = Math.SinCos(2 * Math.PI * ((ulong)c << 20 ^ d) / (1UL << 52));
            readings[i] += usual.Sd * radius * cos;
            if (i + 1 < readings.Length)
            {
                readings[i + 1] += usual.Sd * radius * sin;
            }
        }

        return readings;
    }
}
