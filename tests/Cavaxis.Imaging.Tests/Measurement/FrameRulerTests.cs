using System.Globalization;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Imaging.Tests.Samples;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Imaging.Tests.Measurement;

public sealed class FrameRulerTests
{
    private static readonly Gen<PixelPoint> Points = Gen.Select(Gen.Double[150, 650], Gen.Double[150, 450], static (x, y) => new PixelPoint(x, y));

    [Fact]
    public void A_distance_follows_Pythagoras_with_unequal_steps()
    {
        ImageMeasurement distance = Boxes.Ruler(0.03, 0.02).Distance(new(100, 100), new(200, 300));
        Assert.Equal(50, distance.Value.Value, 1e-9);
        Assert.Equal("mm", distance.Unit);

        // Placing: 1.5 px of 0.3 and 0.2 mm, both ends, along (0.6, 0.8); scale: 2 %/√3 of 30²/50 and 40²/50.
        double placing = Math.Sqrt(2 * (Math.Pow(0.6 * 0.45, 2) + Math.Pow(0.8 * 0.3, 2)));
        double scale = 0.02 / Math.Sqrt(3) * Math.Sqrt(Math.Pow(18, 2) + Math.Pow(32, 2));
        Assert.Equal(placing, distance.PlacementSd, 1e-6);
        Assert.Equal(Math.Sqrt((placing * placing) + (scale * scale)), distance.Value.Sd, 1e-6);
    }

    [Fact]
    public void Lengths_areas_and_angles_do_not_change_when_everything_is_moved() =>
        Gen.Select(Points.Array[3, 8], Gen.Double[-90, 90], Gen.Double[-90, 90]).Sample((points, dx, dy) =>
        {
            if (TooClose(points))
            {
                return;
            }

            FrameRuler ruler = Boxes.Ruler(0.02, 0.035);
            PixelPoint[] moved = [.. points.Select(p => new PixelPoint(p.X + dx, p.Y + dy))];
            Near(ruler.Course(points).Value.Value, ruler.Course(moved).Value.Value);
            Near(ruler.Course(points).Value.Sd, ruler.Course(moved).Value.Sd, 1e-4);
            Near(ruler.Angle(points[0], points[1], points[2]).Value.Value, ruler.Angle(moved[0], moved[1], moved[2]).Value.Value);
            Near(ruler.Area(points[..3]).Value.Value, ruler.Area(moved[..3]).Value.Value);
        });

    [Fact]
    public void Nothing_depends_on_the_order_in_which_the_points_are_named() =>
        Points.Array[3, 8].Sample(points =>
        {
            if (TooClose(points))
            {
                return;
            }

            FrameRuler ruler = Boxes.Ruler(0.02, 0.035);
            PixelPoint[] back = [.. points.AsEnumerable().Reverse()];
            Near(ruler.Course(points).Value.Value, ruler.Course(back).Value.Value);
            Near(ruler.Course(points, smooth: false).Value.Sd, ruler.Course(back, smooth: false).Value.Sd, 1e-5);
            Near(ruler.Angle(points[0], points[1], points[2]).Value.Value, ruler.Angle(points[2], points[1], points[0]).Value.Value);
            PixelPoint[] triangle = points[..3];
            PixelPoint[] turned = [triangle[1], triangle[2], triangle[0]];
            Near(ruler.Area(triangle).Value.Value, ruler.Area(turned).Value.Value);
            Near(ruler.Area(triangle).Value.Value, ruler.Area([.. triangle.AsEnumerable().Reverse()]).Value.Value);
        });

    [Fact]
    public void Twice_the_step_is_twice_the_length_four_times_the_area_and_the_same_angle() =>
        Points.Array[3, 3].Sample(points =>
        {
            if (TooClose(points))
            {
                return;
            }

            FrameRuler small = Boxes.Ruler(0.02, 0.03);
            FrameRuler large = Boxes.Ruler(0.04, 0.06);
            Near(2 * small.Course(points).Value.Value, large.Course(points).Value.Value);
            Near(4 * small.Area(points).Value.Value, large.Area(points).Value.Value);
            Near(small.Angle(points[0], points[1], points[2]).Value.Value, large.Angle(points[0], points[1], points[2]).Value.Value);
        });

    [Fact]
    public void No_way_is_shorter_than_the_straight_one_and_a_turned_picture_measures_the_same() =>
        Gen.Select(Points.Array[3, 8], Gen.Double[0, 6.28]).Sample((points, turn) =>
        {
            if (TooClose(points))
            {
                return;
            }

            FrameRuler ruler = Boxes.Ruler(0.02, 0.02);
            double straight = ruler.Distance(points[0], points[^1]).Value.Value;
            double pieces = ruler.Course(points, smooth: false).Value.Value;
            double smooth = ruler.Course(points).Value.Value;
            Assert.True(straight <= pieces + 1e-9, FormattableString.Invariant($"{straight} > {pieces}"));
            Assert.True(pieces <= smooth + 1e-6, FormattableString.Invariant($"{pieces} > {smooth}"));
            PixelPoint[] turned = [.. points.Select(p => Turned(p, turn))];
            if (turned.All(static p => p.X is > 0 and < 799 && p.Y is > 0 and < 599))
            {
                Near(smooth, ruler.Course(turned).Value.Value);
                Near(ruler.Distance(points[0], points[^1]).Value.Sd, Boxes.Ruler(0.02, 0.02).Distance(points[^1], points[0]).Value.Sd, 1e-5);
            }
        });

    [Theory]
    [InlineData(8, 0.02)]
    [InlineData(12, 0.006)]
    [InlineData(24, 0.001)]
    public void A_circle_through_few_points_is_measured_nearly_whole(int count, double bound)
    {
        const double RadiusPx = 150;
        PixelPoint[] circle = [.. Enumerable.Range(0, count).Select(i => new PixelPoint(400 + (RadiusPx * Math.Cos(2 * Math.PI * i / count)), 300 + (RadiusPx * Math.Sin(2 * Math.PI * i / count))))];
        FrameRuler ruler = Boxes.Ruler(0.02, 0.02);
        double area = Math.PI * Math.Pow(RadiusPx * 0.02, 2);
        Assert.Equal(area, ruler.Area(circle).Value.Value, bound * area);

        // Straight pieces lie inside: n/2 sin(2π/n) r².
        Assert.Equal(count / 2.0 * Math.Sin(2 * Math.PI / count) * 9, ruler.Area(circle, smooth: false).Value.Value, 1e-9);
        PixelPoint[] half = circle[..((count / 2) + 1)];
        double length = Math.PI * RadiusPx * 0.2;
        Assert.Equal(length, ruler.Course(half).Value.Value, bound * length);
        Assert.InRange(Math.Abs(ruler.Course(half).Value.Value - length), 0, 2 * ruler.Course(half).Value.Sd);
    }

    [Fact]
    public void A_known_rectangle_triangle_and_angle_are_exact()
    {
        FrameRuler ruler = Boxes.Ruler(0.02, 0.04);
        PixelPoint[] rectangle = [new(100, 100), new(200, 100), new(200, 150), new(100, 150)];
        Assert.Equal(2 * 2, ruler.Area(rectangle, smooth: false).Value.Value, 1e-9);
        Assert.Equal(90, ruler.Angle(new(200, 100), new(100, 100), new(100, 150)).Value.Value, 1e-9);

        // 45 degrees in mm, though not on the pixels.
        Assert.Equal(45, ruler.Angle(new(200, 100), new(100, 100), new(200, 150)).Value.Value, 1e-9);
        Assert.Equal(180, ruler.Angle(new(200, 100), new(150, 100), new(100, 100)).Value.Value, 1e-9);
        Assert.True(ruler.Angle(new(200, 100), new(150, 100), new(100, 100)).Value.High <= 180);
    }

    [Theory]
    [InlineData(MeasurementKind.Distance)]
    [InlineData(MeasurementKind.CurvedDistance)]
    [InlineData(MeasurementKind.Area)]
    [InlineData(MeasurementKind.Angle)]
    public void The_stated_error_is_the_spread_of_measurements_that_are_placed_again_and_again(MeasurementKind kind)
    {
        // Points jittered by a normal error and steps by their own; against the standard deviation stated for one measurement.
        PixelPoint[] points = [new(200, 200), new(420, 160), new(500, 380), new(260, 420)];
        Random random = new(20261128);
        double[] found = new double[4000];
        for (int i = 0; i < found.Length; i++)
        {
            FrameRuler again = Boxes.Ruler(0.02 * (1 + (ScaleTolerance.LengthRelativeSd * Normal(random))), 0.03 * (1 + (ScaleTolerance.LengthRelativeSd * Normal(random))));
            PixelPoint[] placed = [.. points.Select(p => new PixelPoint(p.X + (1.5 * Normal(random)), p.Y + (1.5 * Normal(random))))];
            found[i] = Measured(again, placed, kind).Value.Value;
        }

        double mean = found.Average();
        double sd = Math.Sqrt(found.Sum(v => (v - mean) * (v - mean)) / (found.Length - 1));
        ImageMeasurement stated = Measured(Boxes.Ruler(0.02, 0.03), points, kind);
        Assert.Equal(1, sd / stated.Value.Sd, 0.05);
        Assert.Equal(mean, stated.Value.Value, 0.1 * stated.Value.Sd);
    }

    [Fact]
    public void A_trace_of_motion_measures_depth_and_not_time()
    {
        CalibratedRegion trace = new(RegionFormat.Motion, RegionContent.Tissue, 0, 0, 399, 299, RegionUnit.Second, RegionUnit.Centimetre, 0.005, 0.01);
        FrameRuler ruler = new(Boxes.Frame, RegionJudge.Judge(400, 300, [trace]));
        Assert.Equal(10, ruler.MotionDepth(new(50, 100), new(350, 200)).Value.Value, 1e-9);
        Assert.Throws<InputFaultException>(() => ruler.Distance(new(50, 100), new(350, 200)));
    }

    [Fact]
    public void A_measurement_carries_frame_points_region_and_hash()
    {
        ImageMeasurement distance = Boxes.Ruler(0.02, 0.02).Distance(new(100, 100), new(200, 300));
        Assert.Equal(new string('a', 64), Assert.Single(distance.Provenance.Frames).FileSha256);
        Assert.Equal<PixelPoint>([new PixelPoint(100, 100), new(200, 300)], distance.Provenance.Points.AsEnumerable());
        Assert.Equal(1, distance.Provenance.Region);
        Assert.Contains("frame 1 of file aaaaaaaaaaaa", distance.Provenance.Words, StringComparison.Ordinal);
        Assert.Contains("region 1", distance.Provenance.Words, StringComparison.Ordinal);
        Assert.InRange(distance.Provenance.ShortWords.Length, 1, 200);
    }

    [Fact]
    public void Slips_are_refused_by_name()
    {
        FrameRuler ruler = Boxes.Ruler(0.02, 0.02);
        Assert.Equal(FaultCode.Contradiction, Refused(() => ruler.Distance(new(100, 100), new(100.4, 100))));
        Assert.Equal(FaultCode.TooFewPoints, Refused(() => ruler.Area([new(100, 100), new(200, 100)])));
        Assert.Equal(FaultCode.Contradiction, Refused(() => ruler.Area([new(100, 100), new(200, 200), new(200, 100), new(100, 200)])));
        Assert.Equal(FaultCode.MalformedText, Refused(() => new FrameIdentity(new string('g', 64), 1)));
        Assert.Equal(FaultCode.OutOfRange, Refused(() => new FrameIdentity(new string('a', 64), 0)));
    }

    private static FaultCode Refused(Func<object> act) => Assert.Throws<InputFaultException>(act).Faults[0].Code;

    private static ImageMeasurement Measured(FrameRuler ruler, PixelPoint[] points, MeasurementKind kind) => kind switch
    {
        MeasurementKind.Distance => ruler.Distance(points[0], points[2]),
        MeasurementKind.CurvedDistance => ruler.Course(points, smooth: false),
        MeasurementKind.Area => ruler.Area(points, smooth: false),
        _ => ruler.Angle(points[0], points[1], points[2]),
    };

    private static PixelPoint Turned(PixelPoint p, double turn) => new(
        400 + ((p.X - 400) * Math.Cos(turn)) - ((p.Y - 300) * Math.Sin(turn)), 300 + ((p.X - 400) * Math.Sin(turn)) + ((p.Y - 300) * Math.Cos(turn)));

    // Neighbours closer than a few pixels make slopes that no one would measure by.
    private static bool TooClose(PixelPoint[] points) => points.SelectMany((p, i) => points.Skip(i + 1).Select(p.DistanceTo)).Any(static d => d < 5);

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static void Near(double expected, double got, double relative = 1e-7) =>
        Assert.True(Math.Abs(expected - got) <= (relative * Math.Abs(expected)) + 1e-7, string.Create(CultureInfo.InvariantCulture, $"{expected} against {got}"));
}
