using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Doppler;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Imaging.Tests.Samples;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tests.Doppler;

public sealed class FlowMeasuringTests
{
    private static readonly SpectralAxes Axes = SpectralAxes.Of(RegionJudge.Judge(320, 240, [Boxes.Spectrum(0, 0, 319, 239, 200)]).Regions[0]);

    [Fact]
    public void An_envelope_drawn_by_hand_integrates_exactly_and_is_marked()
    {
        // A triangle of 100 cm/s over 0.30 s: 15 cm.
        DopplerEnvelope envelope = EnvelopeTracer.Blank(Axes, FlowSide.Above).Correct([new(20, 200), new(35, 100), new(50, 200)]);
        FlowReading flow = FlowMeasuring.Read(Boxes.Frame, envelope, [BeatFinder.ByHand(envelope, 20, 50)]);
        Assert.Equal(15, flow.VelocityTimeIntegral.Value.Value, 1e-9);
        Assert.Equal(100, flow.Peak.Value.Value, 1e-9);
        Assert.Equal(50, flow.Mean.Value.Value, 1e-9);
        Assert.Null(flow.Rate);
        Assert.Equal(31, envelope.Parts.Count(static p => p == EnvelopePart.Corrected));
        Assert.Contains(flow.Peak.Remarks, static r => r.Contains("drawn by a person", StringComparison.Ordinal));
        Assert.Contains(new PixelPoint(35, 100), flow.VelocityTimeIntegral.Provenance.Points);
    }

    [Fact]
    public void A_correction_changes_only_its_own_columns_and_the_trace_can_be_seen_on_the_image()
    {
        DopplerEnvelope drawn = EnvelopeTracer.Blank(Axes, FlowSide.Below).Correct([new(10, 210), new(100, 230)]);
        DopplerEnvelope moved = drawn.Correct([new(40, 215), new(50, 215)]);
        Assert.Equal(drawn.SpeedsCmPerS[39], moved.SpeedsCmPerS[39], 1e-12);
        Assert.Equal(15, moved.SpeedsCmPerS[45], 1e-12);
        Assert.Equal(drawn.SpeedsCmPerS[51], moved.SpeedsCmPerS[51], 1e-12);
        Assert.Equal(new PixelPoint(45, 215), moved.OnImage()[45]);
    }

    [Theory]
    [InlineData(20, 210, 30, 100)]
    [InlineData(30, 100, 20, 100)]
    [InlineData(20, 100, 330, 100)]
    public void Points_on_the_other_side_backwards_or_outside_are_refused(double x1, double y1, double x2, double y2) =>
        Assert.Throws<InputFaultException>(() => EnvelopeTracer.Blank(Axes, FlowSide.Above).Correct([new(x1, y1), new(x2, y2)]));

    [Fact]
    public void The_parts_of_the_error_add_as_stated()
    {
        DopplerEnvelope envelope = EnvelopeTracer.Blank(Axes, FlowSide.Above).Correct([new(20, 150), new(60, 150)]);
        FlowReading flow = FlowMeasuring.Read(Boxes.Frame, envelope, [BeatFinder.ByHand(envelope, 25, 55)], caliper: new CaliperError(2, CaliperError.Usual.Source));

        // 50 cm/s over 0.30 s; envelope 2 cm/s over 0.30 s; two ends of 2 columns at 50 cm/s; scale 2 %/√3.
        Assert.Equal(15, flow.VelocityTimeIntegral.Value.Value, 1e-9);
        double expected = Math.Sqrt(Math.Pow(0.6, 2) + (2 * Math.Pow(0.02 * 50, 2)) + Math.Pow(15 * 0.02 / Math.Sqrt(3), 2));
        Assert.Equal(expected, flow.VelocityTimeIntegral.Value.Sd, 1e-9);
    }

    [Theory]
    [InlineData(0, 1.0)]
    [InlineData(45, 1.4142135623730951)]
    [InlineData(60, 2.0)]
    public void A_speed_is_corrected_by_one_over_the_cosine(double degrees, double factor) => Assert.Equal(factor, new BeamAngle(degrees, 0).Factor, 1e-12);

    [Theory]
    [InlineData(60.0, true)]
    [InlineData(60.1, false)]
    [InlineData(-0.1, false)]
    public void No_speed_is_corrected_beyond_sixty_degrees(double degrees, bool taken) =>
        Assert.Equal(taken, Record.Exception(() => new BeamAngle(degrees, 2)) is null);

    [Theory]
    [InlineData(60, 5)]
    [InlineData(30, 5)]
    [InlineData(0, 8)]
    public void The_error_of_the_angle_is_the_spread_of_speeds_read_with_angles_drawn_by_it(double degrees, double sd)
    {
        Random random = new(3);
        double[] speeds = new double[200_000];
        for (int i = 0; i < speeds.Length; i++)
        {
            double angle = degrees + (sd * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble()));
            speeds[i] = 1 / Math.Cos(angle * Math.PI / 180);
        }

        double mean = speeds.Average();
        double spread = Math.Sqrt(speeds.Sum(v => (v - mean) * (v - mean)) / (speeds.Length - 1)) / new BeamAngle(degrees, sd).Factor;
        Assert.Equal(1, spread / new BeamAngle(degrees, sd).RelativeSd, 0.12);
    }

    [Fact]
    public void Stroke_volume_and_output_follow_the_published_worked_example()
    {
        // A published example: outflow tract 2.0 cm, integral 19 cm, 100 a minute: 60 mL and 6.0 L/min (it takes π as 3.14).
        DopplerEnvelope envelope = EnvelopeTracer.Blank(Axes, FlowSide.Above).Correct([new(20, 200), new(39, 0), new(58, 200), new(80, 200), new(99, 0), new(118, 200), new(140, 200)]);
        FlowReading flow = FlowMeasuring.Read(Boxes.Frame, envelope, [BeatFinder.ByHand(envelope, 20, 80), BeatFinder.ByHand(envelope, 80, 140)]);
        ImageMeasurement diameter = Boxes.Ruler(0.02, 0.02).Distance(new(100, 100), new(200, 100));
        ImageMeasurement volume = StrokeVolumes.Of(flow.VelocityTimeIntegral with { Value = Estimate.Normal(19, 0.95, Origin.Measured) }, diameter);
        Assert.Equal(60, volume.Value.Value, 0.4);

        // Relative error: integral 5 %, diameter counts twice.
        double relative = Math.Sqrt((0.05 * 0.05) + Math.Pow(2 * diameter.Value.Sd / 20, 2));
        Assert.Equal(relative, volume.Value.Sd / volume.Value.Value, 1e-9);
        Assert.Equal(100, flow.Rate!.Value.Value, 1e-9);
        Assert.Equal(6.0, StrokeVolumes.Output(volume, flow.Rate).Value.Value, 0.04);
        Assert.Throws<InputFaultException>(() => StrokeVolumes.Of(diameter, diameter));
    }

    [Fact]
    public void Beats_are_found_whole_and_none_is_made_up_from_steady_flow()
    {
        List<PixelPoint> points = [];
        for (int beat = 0; beat < 4; beat++)
        {
            points.AddRange([new((beat * 75) + 5, 200), new((beat * 75) + 20, 100), new((beat * 75) + 35, 200)]);
        }

        DopplerEnvelope pulsing = EnvelopeTracer.Blank(Axes, FlowSide.Above).Correct(points);
        Assert.Equal(3, BeatFinder.Find(pulsing).Length);
        Assert.All(BeatFinder.Find(pulsing), static beat => Assert.Equal(75, beat.To - beat.From, 0.5));
        Assert.All(BeatFinder.Find(pulsing), beat => Assert.Equal(15, pulsing.IntegralCm(beat.From, beat.To), 0.1));
        Assert.Empty(BeatFinder.Find(EnvelopeTracer.Blank(Axes, FlowSide.Above).Correct([new(0, 150), new(319, 150)])));
    }
}
