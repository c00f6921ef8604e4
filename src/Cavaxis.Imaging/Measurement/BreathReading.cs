using System.Globalization;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Measurement;

/// <summary>
/// Collapsibility from diameters of one vein on several frames. The ratio does not depend on the scale, so only placing errors count: with q = narrowest/widest,
/// σ(q)² = (σmin² + q² σmax²)/widest².
/// </summary>
public static class BreathReading
{
    /// <summary>Shortest look that is likely to hold a whole breath, s: 15 breaths a minute. Common practice, no source.</summary>
    public const double ShortestLookS = 4;

    /// <summary>Reads the change.</summary>
    /// <param name="diameters">Two diameters or more, each a distance or a depth of motion, of one file and one scale.</param>
    /// <param name="secondsSeen">From the first to the last frame, s; null where unknown.</param>
    /// <returns>Widest, narrowest and the indices.</returns>
    /// <exception cref="InputFaultException">Fewer than two, other kinds, or different files or scales.</exception>
    public static BreathVariation Of(IReadOnlyList<ImageMeasurement> diameters, double? secondsSeen = null)
    {
        ArgumentNullException.ThrowIfNull(diameters);
        if (diameters.Count < 2)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.TooFewPoints, "diameters", diameters.Count.ToString(CultureInfo.InvariantCulture), "two diameters or more", "Measure the same vein on frames of both ends of the breath."));
        }

        ImageMeasurement first = diameters[0];
        if (diameters.Any(d => d.Kind is not (MeasurementKind.Distance or MeasurementKind.MotionDepth) || d.Kind != first.Kind))
        {
            throw Mixed("kinds of measurement", "distances, or depths of motion");
        }

        if (diameters.Any(d => d.Provenance.Frames[0].FileSha256 != first.Provenance.Frames[0].FileSha256 || d.Provenance.Region != first.Provenance.Region || d.Provenance.ScaleOrigin != first.Provenance.ScaleOrigin))
        {
            throw Mixed("files or scales", "diameters of one file measured by one scale");
        }

        ImageMeasurement widest = diameters.MaxBy(static d => d.Value.Value)!;
        ImageMeasurement narrowest = diameters.MinBy(static d => d.Value.Value)!;
        double wide = widest.Value.Value;
        double q = narrowest.Value.Value / wide;
        double qSd = Math.Sqrt((narrowest.PlacementSd * narrowest.PlacementSd) + (q * q * widest.PlacementSd * widest.PlacementSd)) / wide;
        double byChance = 100 * RangeOfNormals.Expected(diameters.Count) * diameters.Average(static d => d.PlacementSd) / wide;
        double collapse = 100 * (1 - q);
        List<string> remarks = [];
        if (collapse < 2 * byChance)
        {
            remarks.Add(string.Create(
                CultureInfo.InvariantCulture, $"Placing errors alone would show about {byChance:F0} % on a vein that does not move: this change is not told apart from that with certainty."));
        }

        if (secondsSeen is not double seconds)
        {
            remarks.Add("How long was looked is not known: a whole breath may not be among the frames, and the change be larger.");
        }
        else if (seconds < ShortestLookS)
        {
            remarks.Add(string.Create(CultureInfo.InvariantCulture, $"Only {seconds:F1} s were looked at: a whole breath may not be among the frames, and the change be larger."));
        }

        remarks.Add("The vein also moves along itself with the breath, so the two diameters may be of different places on it.");
        return new BreathVariation(
            widest, narrowest,
            Percent(collapse, 100 * qSd, 100),
            Percent(100 * ((1 / q) - 1), 100 * qSd / (q * q), double.PositiveInfinity),
            Percent(200 * (1 - q) / (1 + q), 400 * qSd / ((1 + q) * (1 + q)), 200),
            byChance, secondsSeen, [.. remarks]);
    }

    private static Estimate Percent(double value, double sd, double most)
    {
        double low = Math.Max(0, value - (Estimate.NormalQuantile95 * sd));
        return Estimate.WithInterval(value, sd, low, Math.Min(most, value + (Estimate.NormalQuantile95 * sd)), Origin.Measured);
    }

    private static InputFaultException Mixed(string what, string accepted) =>
        new(new InputFault(FaultCode.Contradiction, "diameters", $"different {what}", accepted, "Measure all diameters in the same way."));
}
