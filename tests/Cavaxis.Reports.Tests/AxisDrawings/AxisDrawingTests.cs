using Cavaxis.Devices.Cannulae;
using Cavaxis.Reports.AxisDrawings;
using Cavaxis.Reports.Drawings;
using CsCheck;

namespace Cavaxis.Reports.Tests.AxisDrawings;

public class AxisDrawingTests
{
    private static readonly Gen<AxisScene> Scenes =
        from size in Gen.Double[0.25, 1.3]
        from wide in Gen.Double[0, 3]
        from sites in Gen.Enum<EntrySite>().Array[0, 3]
        from tips in Gen.Double[-60, 250].Array[3]
        from offsets in Gen.Double[0, 60].Array[9]
        select Samples.Scene(size, wide) with
        {
            Cannulae =
            [
                .. sites.Select((site, i) => new SceneCannula(
                    $"Cannula {i}", site, 6 * size, Samples.Round(tips[i] * size, 10 * size * wide),
                    [
                        .. Enumerable.Range(0, 3).Select(k => new ScenePort(
                            $"Port {k} of cannula {i}",
                            k == 1 ? LumenPurpose.Return : LumenPurpose.Drainage,
                            Samples.Round((tips[i] * size) + ((site is EntrySite.RightNeck or EntrySite.LeftNeck ? -1 : 1) * offsets[(3 * i) + k] * size), 8 * size),
                            12 * size,
                            (PortFacing)k,
                            k == 2 ? null : new PortZone(-20 * size, 40 * size, k == 0, 0.7))),
                    ])),
            ],
        };

    [Fact]
    public void No_two_words_overlap_in_any_scene() => Scenes.Sample(s => Samples.AssertNoTextOverlaps(AxisDrawing.Of(s)), iter: 400);

    [Fact]
    public void All_words_lie_on_the_paper() => Scenes.Sample(
        s =>
        {
            Drawing drawing = AxisDrawing.Of(s);
            var paper = new Box(0, 0, drawing.WidthMm, drawing.HeightMm);
            Assert.All(drawing.Items.OfType<Text>(), t => Assert.True(paper.Holds(TextMetrics.BoundsOf(t), 0.3), t.Content));
        },
        iter: 200);

    [Fact]
    public void Every_coordinate_is_finite() => Scenes.Sample(
        s => Assert.DoesNotContain("NaN", SvgWriter.Write(AxisDrawing.Of(s)), StringComparison.Ordinal), iter: 200);

    [Theory]
    [InlineData(1.0, "1 : 2 ")]
    [InlineData(0.32, "1 : 1 ")]
    [InlineData(1.3, "1 : 3 ")]
    public void The_largest_standard_scale_that_fits_is_printed(double size, string scale) =>
        Assert.Contains(AxisDrawing.Of(Samples.Scene(size, 1)).Items.OfType<Text>(), t => t.Content.Contains(scale, StringComparison.Ordinal));

    [Fact]
    public void The_scale_bar_is_as_long_as_it_says()
    {
        Line bar = AxisDrawing.Of(Samples.Scene(1, 1)).Items.OfType<Line>().Single(l => l.Style.StrokeWidthMm == 0.8);
        Assert.Equal(50.0 / 2, bar.From.DistanceTo(bar.To), 6);
    }

    [Fact]
    public void Junctions_lie_apart_by_their_distance_and_are_as_wide_as_their_lumen()
    {
        // At 1 : 2 the two mouths, 52 mm apart, lie 26 mm apart on the paper; the planes are the smoothed lumens wide.
        Line[] planes = [.. AxisDrawing.Of(Samples.Scene(1, 1)).Items.OfType<Line>()
            .Where(l => l.Style is { Dash: Dash.Dashed, StrokeWidthMm: 0.25 } && l.From.Y == l.To.Y)];
        Assert.Equal(2, planes.Length);
        Assert.Equal(26, planes[1].From.Y - planes[0].From.Y, 6);
        Assert.Equal(20.0 / 2, planes[0].From.DistanceTo(planes[0].To), 1);
        Assert.Equal(24.0 / 2, planes[1].From.DistanceTo(planes[1].To), 1);
    }

    [Fact]
    public void A_cannula_is_as_wide_as_its_outer_diameter()
    {
        AxisScene scene = Samples.Scene(1, 1) with { Cannulae = [new("C", EntrySite.RightNeck, 9, Spread.Exact(90), [])] };
        Polygon body = AxisDrawing.Of(scene).Items.OfType<Polygon>().Single(p => p.Style.StrokeWidthMm == 0.4);
        Point[] half = [.. body.Points.Take(body.Points.Count / 2)];
        Point opposite = body.Points[body.Points.Count - 1 - (half.Length / 2)];
        Assert.Equal(9.0 / 2, half[half.Length / 2].DistanceTo(opposite), 6);
    }

    [Fact]
    public void The_patients_right_is_on_the_left_and_written_so()
    {
        Text[] words = [.. AxisDrawing.Of(Samples.Scene(1, 1)).Items.OfType<Text>()];
        Assert.True(words.Single(w => w.Content.Contains("patient's right", StringComparison.Ordinal)).At.X
            < words.Single(w => w.Content.Contains("patient's left", StringComparison.Ordinal)).At.X);
        Assert.Contains(words, w => w.Content == "seen from the front");
    }

    [Fact]
    public void A_return_toward_the_valve_points_to_the_patients_left_and_away_to_the_right()
    {
        static Arrow Jet(PortFacing facing) => AxisDrawing.Of(Samples.Scene(1, 1) with
        {
            Cannulae = [new("C", EntrySite.RightNeck, 9, Spread.Exact(90), [new("R", LumenPurpose.Return, Spread.Exact(30), 6, facing)])],
        }).Items.OfType<Arrow>().Single();
        Assert.True(Jet(PortFacing.TowardTricuspid).To.X > Jet(PortFacing.TowardTricuspid).From.X);
        Assert.True(Jet(PortFacing.AwayFromTricuspid).To.X < Jet(PortFacing.AwayFromTricuspid).From.X);
    }

    [Fact]
    public void Far_skin_entries_carry_their_true_distance_in_words()
    {
        string words = string.Join(' ', AxisDrawing.Of(Samples.Scene(1, 1)).Items.OfType<Text>().Select(t => t.Content));
        Assert.Contains("44.0 cm below SCAJ", words, StringComparison.Ordinal);
        Assert.Contains("beyond the break, not to scale", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_zone_not_met_differs_in_words_and_line_style()
    {
        Drawing drawing = AxisDrawing.Of(Samples.Scene(1, 1) with
        {
            Cannulae = [new("C", EntrySite.RightNeck, 9, Spread.Exact(90),
                [new("R", LumenPurpose.Return, Spread.Exact(30), 6, PortFacing.TowardTricuspid, new PortZone(50, 80, Acceptable: false, 0.1))])],
        });
        Assert.Contains(drawing.Items.OfType<Text>(), t => t.Content.Contains("✗ zone not met, 10 % inside", StringComparison.Ordinal));
        Assert.Contains(drawing.Items.OfType<Rectangle>(), r => r.Style.Dash == Dash.Dashed && r.Style.StrokeWidthMm == 0.4);
    }

    [Fact]
    public void The_whole_fits_an_A4_page_at_true_size() => Scenes.Sample(
        s => Assert.InRange(AxisDrawing.Of(s with { Cannulae = [.. s.Cannulae.Take(2)] }).HeightMm, 60, 245), iter: 100);

    [Fact]
    public void A_trunk_with_a_gap_or_a_wrong_order_or_no_number_is_refused()
    {
        AxisScene scene = Samples.Scene(1, 1);
        AxisSegment[] trunk = [.. scene.Segments];
        Assert.Throws<ArgumentException>(() => AxisDrawing.Of(scene with { Segments = [trunk[0], trunk[1], trunk[3]] }));
        Assert.Throws<ArgumentException>(() => AxisDrawing.Of(scene with { Segments = [trunk[1], trunk[0], trunk[2]] }));
        Assert.Throws<ArgumentException>(() => AxisDrawing.Of(scene with { Segments = [] }));
        Assert.Throws<ArgumentException>(() => AxisDrawing.Of(scene with { Segments = [trunk[0] with { TopMm = double.NaN }, .. trunk[1..]] }));
        Assert.Throws<ArgumentException>(() => AxisDrawing.Of(scene with { Landmarks = [new(LandmarkKind.Other, "x", new Spread(0, 5, -5))] }));
    }
}
