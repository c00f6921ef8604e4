using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Doppler;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>Integrals, stroke volume and angle correction of Doppler spectra against closed forms and published worked examples; the program traces a spectrum that is drawn here.</summary>
public sealed class ImagingFlowChecks : IReferenceChecks
{
    private const string Room = "Imaging";
    private const int Columns = 320;
    private const int Rows240 = 240;
    private const int Baseline = 200;
    private static readonly FrameIdentity Frame = new(new string('0', 64), 1);
    private static readonly Source Integral = new("integral of a half sine 2/π V T and of a triangle V T/2", Certainty.ClosedForm);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows()
    {
        FlowReading sine = Traced(static t => t % 0.8 < 0.3 ? 100 * Math.Sin(Math.PI * (t % 0.8) / 0.3) : 0);
        yield return Row("integral of half sines of 100 cm/s and 0.30 s, traced by the program", Integral, 200 / Math.PI * 0.3, sine.VelocityTimeIntegral.Value.Value, "cm", Tolerance.Relative, 0.04);
        yield return Row("their highest speed", Integral, 100, sine.Peak.Value.Value, "cm/s", Tolerance.Relative, 0.02);
        yield return Row("their rate, one every 0.80 s", Integral, 75, sine.Rate?.Value.Value ?? double.NaN, "/min", Tolerance.Relative, 0.02);
        FlowReading triangle = Traced(static t => Math.Max(0, 90 * (1 - (Math.Abs((t % 0.7) - 0.15) / 0.15))));
        yield return Row("integral of triangles of 90 cm/s and 0.30 s, traced by the program", Integral, 13.5, triangle.VelocityTimeIntegral.Value.Value, "cm", Tolerance.Relative, 0.05);

        Source first = new("worked example of a teaching page on echocardiography: 2.0 cm, 19 cm, 100 a minute", Certainty.Seen);
        ImageMeasurement volume = StrokeVolumes.Of(Value(sine, 19), Diameter(100));
        yield return Row("stroke volume by 2.0 cm and 19 cm", first, 60, volume.Value.Value, "mL", Tolerance.Absolute, 0.5, "The page takes π as 3.14 and rounds.");
        yield return Row("output at 100 a minute", first, 6.0, StrokeVolumes.Output(volume, Rate(sine, 100)).Value.Value, "L/min", Tolerance.Absolute, 0.05);
        Source second = new("worked example of another: 2.0 cm, 20 cm, 70 a minute", Certainty.Seen);
        ImageMeasurement other = StrokeVolumes.Of(Value(sine, 20), Diameter(100));
        yield return Row("stroke volume by 2.0 cm and 20 cm", second, 62.8, other.Value.Value, "mL", Tolerance.Absolute, 0.05);
        yield return Row("output at 70 a minute", second, 4.4, StrokeVolumes.Output(other, Rate(sine, 70)).Value.Value, "L/min", Tolerance.Absolute, 0.05);

        Source cosine = new("Doppler equation: v = measured/cos θ", Certainty.ClosedForm);
        yield return Row("correction of a speed at 60 degrees, the largest that is corrected", cosine, 2, new BeamAngle(60, 0).Factor, "1", Tolerance.Absolute, 1e-12);
        yield return Row("speed unread at 20 degrees without correction: 1 - cos 20", cosine, 0.0603, BeamAngle.UnreadShare(20), "1", Tolerance.Absolute, 1e-4);
        yield return Row(
            "error of a speed at 45 degrees by one of 1 degree in the angle: tan 45 × π/180", cosine, Math.PI / 180, new BeamAngle(45, 1).RelativeSd, "1", Tolerance.Relative, 0.01, "First order; the program adds the next.");
    }

    // Above the baseline 70 grey steps over an even floor; no noise, so that the rows are the same everywhere. Noise is for the tests.
    private static FlowReading Traced(Func<double, double> speed)
    {
        byte[] bytes = new byte[Columns * Rows240];
        for (int x = 0; x < Columns; x++)
        {
            double envelope = speed(x * 0.01);
            for (int y = 0; y < Rows240; y++)
            {
                double v = Baseline - y;
                bytes[(y * Columns) + x] = (byte)(v > 0 && v <= envelope ? 85 : 15);
            }
        }

        CalibratedRegion region = new(
            RegionFormat.Spectral, RegionContent.PulsedWave, 0, 0, Columns - 1, Rows240 - 1, RegionUnit.Second, RegionUnit.CentimetrePerSecond, 0.01, 1, 0, Baseline);
        SpectralAxes axes = SpectralAxes.Of(RegionJudge.Judge(Columns, Rows240, [region]).Regions[0]);
        DopplerEnvelope envelopeTraced = EnvelopeTracer.Trace(new ImageFrame(Columns, Rows240, 1, bytes), axes);
        return FlowMeasuring.Read(Frame, envelopeTraced, BeatFinder.Find(envelopeTraced));
    }

    private static ImageMeasurement Value(FlowReading flow, double cm) => flow.VelocityTimeIntegral with { Value = Estimate.Normal(cm, 0, Origin.Measured) };

    private static ImageMeasurement Rate(FlowReading flow, double perMin) => flow.Rate! with { Value = Estimate.Normal(perMin, 0, Origin.Measured) };

    private static ImageMeasurement Diameter(double pixels)
    {
        CalibratedRegion region = new(RegionFormat.TwoDimensional, RegionContent.Tissue, 0, 0, 799, 599, RegionUnit.Centimetre, RegionUnit.Centimetre, 0.02, 0.02);
        return new FrameRuler(Frame, RegionJudge.Judge(800, 600, [region])).Distance(new(100, 100), new(100 + pixels, 100));
    }

    private static ValidationRow Row(string check, Source source, double expected, double got, string unit, Tolerance tolerance, double bound, string note = "") =>
        new(Room, $"Measurement: {check}", source, expected, got, unit, tolerance, bound, note);
}
