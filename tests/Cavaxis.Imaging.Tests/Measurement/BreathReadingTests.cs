using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Imaging.Tests.Samples;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tests.Measurement;

public sealed class BreathReadingTests
{
    [Fact]
    public void The_indices_follow_their_published_definitions()
    {
        BreathVariation breath = BreathReading.Of([Diameter(100), Diameter(60), Diameter(80)], 6);
        Assert.Equal(40, breath.CollapsibilityPercent.Value, 1e-9);
        Assert.Equal(200 / 3.0, breath.DistensibilityPercent.Value, 1e-9);
        Assert.Equal(50, breath.VariationPercent.Value, 1e-9);
        Assert.Equal((20, 12), ((int)Math.Round(breath.Widest.Value.Value), (int)Math.Round(breath.Narrowest.Value.Value)));
    }

    [Fact]
    public void The_error_of_the_index_is_the_spread_of_placing_again_and_the_scale_does_not_enter()
    {
        BreathVariation breath = BreathReading.Of([Diameter(100), Diameter(60)], 6);
        Random random = new(7);
        double[] found = new double[20_000];
        for (int i = 0; i < found.Length; i++)
        {
            double wide = 100 + (Math.Sqrt(2) * 1.5 * Normal(random));
            double narrow = 60 + (Math.Sqrt(2) * 1.5 * Normal(random));
            found[i] = 100 * (1 - (narrow / wide));
        }

        double mean = found.Average();
        double sd = Math.Sqrt(found.Sum(v => (v - mean) * (v - mean)) / (found.Length - 1));
        Assert.Equal(1, sd / breath.CollapsibilityPercent.Sd, 0.03);
    }

    [Fact]
    public void A_change_that_placing_alone_could_make_is_told()
    {
        Assert.Contains(BreathReading.Of([Diameter(100), Diameter(98)], 6).Remarks, static r => r.StartsWith("Placing errors alone", StringComparison.Ordinal));
        Assert.DoesNotContain(BreathReading.Of([Diameter(100), Diameter(60)], 6).Remarks, static r => r.StartsWith("Placing errors alone", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(3.9, true)]
    [InlineData(4.0, false)]
    public void A_look_too_short_for_a_breath_is_told(double seconds, bool told) =>
        Assert.Equal(told, BreathReading.Of([Diameter(100), Diameter(60)], seconds).Remarks.Any(static r => r.StartsWith("Only", StringComparison.Ordinal)));

    [Fact]
    public void Diameters_of_other_files_or_kinds_are_not_mixed()
    {
        FrameRuler other = new(new FrameIdentity(new string('b', 64), 1), RegionJudge.Judge(800, 600, [Boxes.Tissue(0, 0, 799, 599)]));
        Assert.Throws<InputFaultException>(() => BreathReading.Of([Diameter(100), other.Distance(new(100, 100), new(200, 100))]));
        Assert.Throws<InputFaultException>(() => BreathReading.Of([Diameter(100), Boxes.Ruler(0.02, 0.02).Course([new(100, 100), new(200, 100)])]));
        Assert.Throws<InputFaultException>(() => BreathReading.Of([Diameter(100)]));
    }

    [Theory]
    [InlineData(2, 1.128)]
    [InlineData(3, 1.693)]
    [InlineData(5, 2.326)]
    [InlineData(10, 3.078)]
    [InlineData(25, 3.931)]
    public void The_range_by_chance_is_that_of_the_tables_of_quality_control(int count, double d2) =>
        Assert.Equal(d2, RangeOfNormals.Expected(count), 6e-4);

    [Fact]
    public void The_loop_with_a_vein_of_64_to_84_pixels_collapses_by_24_per_cent()
    {
        if (SampleFolder.Path is null)
        {
            return;
        }

        PlainFile file = new("us_synth", "synth_10frame_ivc_pw.dcm");
        IReadOnlyList<ImageFrame> frames = file.Frames();
        FrameCalibration calibration = RegionJudge.Judge(file.Width, file.Height, file.Regions());
        IReadOnlyList<(PixelPoint From, PixelPoint To)?> walls = DiameterFollower.Follow(frames, new(127, 75), new(193, 75));
        Assert.Equal(10, walls.Count);
        ImageMeasurement[] diameters = [.. walls.Select((w, i) => new FrameRuler(new FrameIdentity(new string('c', 64), i + 1), calibration).Distance(w!.Value.From, w.Value.To))];
        for (int k = 0; k < 10; k++)
        {
            // A disc of pixels whose middles lie within the radius is up to a pixel wider or narrower than its diameter.
            Assert.Equal(0.2 * (84 - (4 * Math.Abs(5 - k))), diameters[k].Value.Value, 0.2);
        }

        BreathVariation breath = BreathReading.Of(diameters, 0.9);
        Assert.Equal(23.8, breath.CollapsibilityPercent.Value, 0.7);
        Assert.Equal((6, 1), (breath.Widest.Provenance.Frames[0].Frame, breath.Narrowest.Provenance.Frames[0].Frame));
    }

    [Fact]
    public void The_still_shows_a_vein_of_13_6_mm()
    {
        if (SampleFolder.Path is null)
        {
            return;
        }

        PlainFile file = new("us_synth", "synth_bmode_colour_pw.dcm");
        (PixelPoint from, PixelPoint to) = DiameterFollower.Follow(file.Frames(), new(160, 30), new(160, 120))[0]!.Value;
        ImageMeasurement diameter = new FrameRuler(Boxes.Frame, RegionJudge.Judge(file.Width, file.Height, file.Regions())).Distance(from, to);
        Assert.Equal(13.6, diameter.Value.Value, 0.3);
        Assert.InRange(13.6, diameter.Value.Low, diameter.Value.High);
    }

    [Fact]
    public void Where_no_wall_is_seen_none_is_made_up()
    {
        byte[] grey = new byte[100 * 100];
        Array.Fill(grey, (byte)90);
        Assert.Null(DiameterFollower.Follow([new ImageFrame(100, 100, 1, grey)], new(30, 50), new(70, 50))[0]);
    }

    private static ImageMeasurement Diameter(double pixels) => Boxes.Ruler(0.02, 0.02).Distance(new(100, 100), new(100 + pixels, 100));

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
