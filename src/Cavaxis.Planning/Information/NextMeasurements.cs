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
    /// <returns>Measurements that tell something about this plan.</returns>
    public IReadOnlyList<MeasurementValue> Of(Combination combination)
    {
        SlotOption main = combination.Draining;
        SlotOption? back = combination.InRole(CannulaRole.VenousReturn);
        ulong[] marks = new ulong[(context.Samples.Count + 63) / 64];
        JointFit.Mark(main.Windows!, back?.Windows, context.Landmarks, context.SeparationMm, marks);
        double[] fits = Outcomes(combination, marks);
        DepthWindows windows = main.Windows!;
        double[] depthsMm = FitSummary.SuitableMiddles(windows);
        double fitNow = ValueOfInformation.Variance(fits);
        bool depthCounts = depthsMm.Length >= ValueOfInformation.FewestAnatomies;
        double depthNow = depthCounts ? ValueOfInformation.Variance(depthsMm) : 0;
        UsualMeasurement[] missing = [.. UsualMeasurement.All.Where(usual => !AlreadyKnown(usual))];
        MeasurementValue[] values = new MeasurementValue[missing.Length];
        Parallel.For(0, missing.Length, i =>
        {
            UsualMeasurement usual = missing[i];
            int[] order = Order(usual);
            double[] outcomes = context.Rows.Rent();
            double fitAfter = Math.Min(fitNow, ValueOfInformation.Remaining(InOrder(fits, order, outcomes)));
            double depthAfter = depthCounts
                ? Math.Min(depthNow, ValueOfInformation.Remaining(DepthsInOrder(windows, order, outcomes)))
                : 0;
            context.Rows.Return(outcomes);
            values[i] = new MeasurementValue(
                usual.Dimension,
                usual.How,
                usual.Sd,
                usual.Unit,
                fitNow,
                fitAfter,
                fitNow > 0 ? 1 - (fitAfter / fitNow) : 0,
                Math.Sqrt(depthNow) / 10,
                Math.Sqrt(depthAfter) / 10,
                depthNow > 0 ? 1 - (depthAfter / depthNow) : 0);
        });

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

    /// <summary>The anatomies in ascending order of a simulated reading.</summary>
    private int[] Order(UsualMeasurement usual)
    {
        int[] order = new int[context.Samples.Count];
        for (int i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        double[] readings = Readings(usual);
        Array.Sort(readings, order);
        context.Rows.Return(readings);
        return order;
    }

    private static ReadOnlySpan<double> InOrder(double[] values, int[] order, double[] target)
    {
        for (int i = 0; i < order.Length; i++)
        {
            target[i] = values[order[i]];
        }

        return target;
    }

    private static ReadOnlySpan<double> DepthsInOrder(DepthWindows windows, int[] order, double[] target)
    {
        (double[] low, double[] high) = (windows.Low, windows.High);
        int next = 0;
        foreach (int anatomy in order)
        {
            if (low[anatomy] <= high[anatomy])
            {
                target[next++] = (low[anatomy] + high[anatomy]) / 2;
            }
        }

        return target.AsSpan(0, next);
    }

    private bool AlreadyKnown(UsualMeasurement usual) => context.Axis.IsMeasured(usual.Dimension)
        && context.Axis.Interval(usual.Dimension).Sd <= 1.2 * usual.Sd;

    private double[] Readings(UsualMeasurement usual)
    {
        double[] readings = context.Rows.Rent();
        context.Samples[usual.Dimension].CopyTo(readings);
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
