using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Doppler;

/// <summary>
/// Integral, peak and mean of an envelope with their errors. Parts of the standard deviation: the envelope lies higher or lower everywhere by σₚ rows (σₚ × step × time with flow for the
/// integral); begin and end of each beat are placed to σₚ columns; the scale of speed; the angle; and, from two beats on, the spread of the beats over the root of their number.
/// </summary>
public static class FlowMeasuring
{
    /// <summary>Reads beats.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="envelope">The envelope, traced or corrected.</param>
    /// <param name="beats">The beats, found or given by hand.</param>
    /// <param name="angle">Angle between beam and flow by which speeds are corrected; null for no correction.</param>
    /// <param name="caliper">How surely the envelope is placed; null for the usual.</param>
    /// <returns>Integral, peak, mean and rate.</returns>
    /// <exception cref="InputFaultException">No beat.</exception>
    public static FlowReading Read(FrameIdentity frame, DopplerEnvelope envelope, IReadOnlyList<BeatWindow> beats, BeamAngle? angle = null, CaliperError? caliper = null)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(envelope);
        ArgumentNullException.ThrowIfNull(beats);
        if (beats.Count == 0)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.TooFewPoints, "beats", "(nothing)", "one beat or more", "No two rises of the flow were found: give begin and end of a beat by hand."));
        }

        double placedPx = (caliper ?? CaliperError.Usual).PlacementSdPx;
        SpectralAxes axes = envelope.Axes;
        double factor = angle?.Factor ?? 1;
        double relative = Math.Sqrt(Square(ScaleTolerance.SpeedRelativeSd) + Square(angle?.RelativeSd ?? 0));
        double speedSd = placedPx * axes.CmPerSPerRow;
        double timeSd = placedPx * axes.SecondsPerColumn;

        double[] integrals = [.. beats.Select(beat => envelope.IntegralCm(beat.From, beat.To))];
        double[] peaks = [.. beats.Select(beat => Peak(envelope, beat))];
        double[] seconds = [.. beats.Select(beat => (beat.To - beat.From) * axes.SecondsPerColumn)];
        double duration = seconds.Average();
        double flowing = beats.Average(beat => FlowSeconds(envelope, beat));
        double ends = beats.Average(beat => Square(envelope.SpeedAt(beat.From)) + Square(envelope.SpeedAt(beat.To)));
        double endsSd = timeSd * Math.Sqrt(ends / beats.Count);

        MeasurementProvenance provenance = new([frame], Points(envelope, beats), axes.Region, axes.Origin, axes.Words, placedPx);
        ImmutableArray<string> remarks = Remarks(envelope, beats, angle);
        double vti = integrals.Average();
        double vtiPlacing = Math.Sqrt(Square(speedSd * flowing) + Square(endsSd) + Between(integrals));
        double peak = peaks.Average();
        ImageMeasurement integral = Of(MeasurementKind.VelocityTimeIntegral, "cm", vti, vtiPlacing);
        ImageMeasurement highest = Of(MeasurementKind.PeakVelocity, "cm/s", peak, Math.Sqrt(Square(speedSd) + Between(peaks)));
        ImageMeasurement mean = Of(MeasurementKind.MeanVelocity, "cm/s", vti / duration, Math.Sqrt(Square(speedSd * flowing) + Between(integrals)) / duration);
        return new FlowReading(integral, highest, mean, Rate(beats, seconds, timeSd, provenance), beats.Count);

        ImageMeasurement Of(MeasurementKind kind, string unit, double value, double placing)
        {
            double corrected = value * factor;
            double sd = Math.Sqrt(Square(placing * factor) + Square(corrected * relative));
            return new ImageMeasurement(kind, Estimate.Normal(corrected, sd, Origin.Measured), unit, provenance, remarks) { ScaleRelativeSd = relative, PlacementSd = placing * factor };
        }
    }

    private static ImageMeasurement? Rate(IReadOnlyList<BeatWindow> beats, double[] seconds, double timeSd, MeasurementProvenance provenance)
    {
        if (beats.Count < 2)
        {
            return null;
        }

        double duration = seconds.Average();

        // Of beats in a row only the two outer ends count for the mean; the spread of the beats is that of the heart.
        double sd = Math.Sqrt((2 * Square(timeSd / beats.Count)) + Between(seconds));
        double rate = 60 / duration;
        return new ImageMeasurement(MeasurementKind.BeatRate, Estimate.Normal(rate, rate * sd / duration, Origin.Measured), "/min", provenance, []) { PlacementSd = rate * sd / duration };
    }

    private static double Peak(DopplerEnvelope envelope, BeatWindow beat)
    {
        double highest = 0;
        for (int i = (int)Math.Ceiling(beat.From); i <= beat.To && i < envelope.SpeedsCmPerS.Length; i++)
        {
            highest = Math.Max(highest, envelope.SpeedsCmPerS[i]);
        }

        return highest;
    }

    private static double FlowSeconds(DopplerEnvelope envelope, BeatWindow beat)
    {
        int flowing = 0;
        for (int i = (int)Math.Ceiling(beat.From); i < beat.To && i < envelope.SpeedsCmPerS.Length; i++)
        {
            flowing += envelope.SpeedsCmPerS[i] > 0 ? 1 : 0;
        }

        return flowing * envelope.Axes.SecondsPerColumn;
    }

    // Variance of the mean of beats; zero for one.
    private static double Between(double[] values)
    {
        if (values.Length < 2)
        {
            return 0;
        }

        double mean = values.Average();
        return values.Sum(v => Square(v - mean)) / (values.Length - 1) / values.Length;
    }

    private static ImmutableArray<PixelPoint> Points(DopplerEnvelope envelope, IReadOnlyList<BeatWindow> beats) =>
    [
        .. beats.Select(beat => new PixelPoint(envelope.Axes.Left + beat.From, envelope.Axes.BaselineRow)),
        new PixelPoint(envelope.Axes.Left + beats[^1].To, envelope.Axes.BaselineRow),
        .. envelope.Corrections,
    ];

    private static ImmutableArray<string> Remarks(DopplerEnvelope envelope, IReadOnlyList<BeatWindow> beats, BeamAngle? angle)
    {
        List<string> remarks =
        [
            angle is null
                ? string.Create(CultureInfo.InvariantCulture, $"Not corrected for the angle between beam and flow: speeds read {100 * BeamAngle.UnreadShare(10):F1} % too low at 10 degrees, {100 * BeamAngle.UnreadShare(20):F0} % at 20, {100 * BeamAngle.UnreadShare(30):F0} % at 30.")
                : string.Create(CultureInfo.InvariantCulture, $"Corrected for an angle of {angle.Degrees:F0} ± {angle.SdDegrees:F0} degrees between beam and flow, times {angle.Factor:F2}."),
        ];
        if (envelope.ReachesEdge)
        {
            remarks.Add("The spectrum reaches the edge of its region: it may be cut or wrap to the other side, and peak and integral be larger.");
        }

        if (envelope.CorrectedShare > 0)
        {
            remarks.Add(string.Create(CultureInfo.InvariantCulture, $"{100 * envelope.CorrectedShare:F0} % of the envelope was drawn by a person."));
        }

        if (envelope.Axes.BaselineByHand)
        {
            remarks.Add("The baseline was placed by a person.");
        }

        if (beats.Count == 1)
        {
            remarks.Add("One beat: the spread from beat to beat is not in the error.");
        }

        return [.. remarks];
    }

    private static double Square(double x) => x * x;
}
