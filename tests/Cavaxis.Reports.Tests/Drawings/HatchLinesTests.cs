using Cavaxis.Reports.Drawings;
using CsCheck;

namespace Cavaxis.Reports.Tests.Drawings;

public class HatchLinesTests
{
    [Theory]
    [InlineData(Hatch.Rising)]
    [InlineData(Hatch.Falling)]
    [InlineData(Hatch.Level)]
    [InlineData(Hatch.Upright)]
    public void Lines_times_spacing_give_the_area(Hatch hatch)
    {
        // A closed form: parallel lines at spacing s measure area as s times their length, up to the edges.
        Point[] triangle = [new(0, 0), new(60, 0), new(0, 40)];
        double length = HatchLines.Inside(triangle, hatch, 0.05).Sum(p => p.From.DistanceTo(p.To));
        Assert.Equal(1200, length * 0.05, tolerance: 1.0);
    }

    [Fact]
    public void Every_piece_lies_in_a_convex_outline() =>
        Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], Gen.Double[1, 30]).Sample(t =>
        {
            (double x, double y, double r) = t;
            foreach ((Point from, Point to) in HatchLines.Inside(Outline.Ellipse(new Point(x, y), r, r), Hatch.Crossed, 1.1))
            {
                Assert.True(from.DistanceTo(new Point(x, y)) <= r + 1e-9);
                Assert.True(to.DistanceTo(new Point(x, y)) <= r + 1e-9);
            }
        });

    [Fact]
    public void No_hatch_gives_no_lines() =>
        Assert.Empty(HatchLines.Inside([new(0, 0), new(1, 0), new(1, 1)], Hatch.None, 1));
}
