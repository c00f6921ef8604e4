using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>Against closed forms: straight lines, arcs, refraction, ellipses, ellipsoids.</summary>
public sealed class AnalyticTests
{
    private static readonly Gen<Vector3D> Places = Gen.Select(Gen.Double[4, 56], Gen.Double[4, 46], Gen.Double[4, 66], static (x, y, z) => new Vector3D(x, y, z));

    [Fact]
    public void Where_every_millimetre_costs_the_same_the_cheapest_way_is_the_straight_line() =>
        Gen.Select(Places, Places).Where(static t => (t.Item1 - t.Item2).Length > 15).Sample(
            static (from, to) =>
            {
                TravelCost cost = new(Vector3D.Zero, 2, 31, 26, 36, Enumerable.Repeat(1.5f, 31 * 26 * 36).ToArray());
                (SpaceCurve way, double total) = MinimalPath.Between(cost, from, to);
                double straight = (to - from).Length;
                Assert.InRange(total, (0.96 * 1.5 * straight) - 3, (1.04 * 1.5 * straight) + 3);
                Assert.InRange(way.LengthMm, straight - 1e-9, (1.02 * straight) + 0.5);
                Assert.True(way.Points.Max(p => Aside(p, from, to)) < 1.5);
            },
            iter: 40);

    [Fact]
    public void A_way_into_slower_ground_is_broken_as_Snell_has_it()
    {
        // Cost 1 above x = 40, 2 below: sin a = 2 sin b at the border.
        float[] perMm = new float[81 * 81 * 5];
        for (int n = 0; n < perMm.Length; n++)
        {
            perMm[n] = n % 81 < 40 ? 1 : 2;
        }

        TravelCost cost = new(Vector3D.Zero, 1, 81, 81, 5, perMm);
        SpaceCurve way = MinimalPath.Between(cost, new(10, 10, 2), new(70, 60, 2)).Way;
        double best = Enumerable.Range(0, 5001).Min(n => Cost(10 + (n / 100.0)));
        double crossing = Enumerable.Range(0, 5001).MinBy(n => Cost(10 + (n / 100.0))) / 100.0 + 10;
        Vector3D border = way.Points.MinBy(static p => Math.Abs(p.X - 39.5));
        Assert.Equal(crossing, border.Y, 1.5);
        double sum = way.Points.Zip(way.Points.Skip(1)).Sum(static pair => (pair.Second - pair.First).Length * ((pair.First.X + pair.Second.X) / 2 < 39.5 ? 1 : 2));
        Assert.InRange(sum, best * 0.999, best * 1.02);

        static double Cost(double y) => Math.Sqrt(Square(29.5) + Square(y - 10)) + (2 * Math.Sqrt(Square(30.5) + Square(60 - y)));
    }

    [Fact]
    public void An_arc_of_a_circle_has_the_length_of_its_angle_and_smoothing_leaves_straight_lines_alone()
    {
        SpaceCurve arc = new(Enumerable.Range(0, 201).Select(static n => new Vector3D(50 * Math.Cos(n * 0.005 * Math.PI), 50 * Math.Sin(n * 0.005 * Math.PI), 0)));
        Assert.Equal(50 * Math.PI, arc.LengthMm, 0.01);
        Assert.Equal(25 * Math.PI, arc.Nearest(new(0, 70, 0)).ArcMm, 0.01);
        Assert.Equal(20, arc.Nearest(new(0, 70, 0)).DistanceMm, 0.01);

        // A Gaussian of width s draws a circle of radius R in by about s²/(2R) (second derivative of the arc).
        SpaceCurve smooth = arc.Smoothed(5);
        Assert.Equal(50 - (25 / 100.0), smooth.At(smooth.LengthMm / 2).Length, 0.02);
        SpaceCurve straight = new SpaceCurve([Vector3D.Zero, new(3, 4, 0), new(30, 40, 0)]).Smoothed(6);
        Assert.Equal(50, straight.LengthMm, 1e-9);
        Assert.All(straight.Points, static p => Assert.Equal(0, Aside(p, Vector3D.Zero, new(30, 40, 0)), 1e-9));
    }

    [Fact]
    public void A_line_needs_two_places_that_lie_apart() =>
        Assert.Equal("curve.points", Assert.Throws<InputFaultException>(static () => new SpaceCurve([new(1, 2, 3), new(1, 2, 3)])).Faults[0].Field);

    [Fact]
    public void A_section_has_the_area_and_the_middle_of_its_ellipse()
    {
        const double A = 13;
        const double B = 8;
        double[] radii = [.. Enumerable.Range(0, 48).Select(static n => Radius(2 * Math.PI * n / 48))];
        LumenSection section = new(0, new(5, 6, 7), new(1, 0, 0), new(0, 0, -1), radii, 100, 50, 0);
        Assert.Equal(Math.PI * A * B, section.AreaMm2, 0.01);
        Assert.Equal(2 * Math.Sqrt(A * B), section.DiameterMm, 1e-3);
        Assert.True((section.Centroid - section.Centre).Length < 1e-6);

        static double Radius(double angle) => A * B / Math.Sqrt(Square(B * Math.Cos(angle)) + Square(A * Math.Sin(angle)));
    }

    [Fact]
    public void A_section_of_a_circle_seen_from_beside_its_middle_has_the_middle_of_the_circle()
    {
        // Circle of radius 10 seen from 3 mm beside its middle: r(t) = 3 cos t + sqrt(100 - 9 sin² t).
        double[] radii = [.. Enumerable.Range(0, 48).Select(static n => (3 * Math.Cos(2 * Math.PI * n / 48)) + Math.Sqrt(100 - Square(3 * Math.Sin(2 * Math.PI * n / 48))))];
        LumenSection section = new(0, Vector3D.Zero, new(1, 0, 0), new(0, 1, 0), radii, 100, 50, 0);
        Assert.Equal(20, section.DiameterMm, 1e-6);
        Assert.Equal(3, section.Centroid.X, 1e-6);
        Assert.Equal(0, section.Centroid.Y, 1e-9);
    }

    [Fact]
    public void A_tube_that_runs_into_an_ellipsoid_widens_where_both_are_as_wide() =>
        Gen.Select(Gen.Double[5, 10], Gen.Double[17, 24], Gen.Double[25, 40]).Sample(static (r, a, c) =>
        {
            // Pole at 40 mm; the ellipsoid is as wide as the tube c (1 - sqrt(1 - r²/a²)) beyond it.
            double[] at = [.. Enumerable.Range(0, 40).Select(static n => 2.0 * n)];
            double truth = 40 + (c * (1 - Math.Sqrt(1 - (r * r / (a * a)))));
            Widening? found = Widening.Fit(
                at.Select(x => (x, Math.PI * Math.Max(r * r, a * a * (1 - Square((x - 40 - c) / c))))).Where(p => p.x > truth - 3 && p.x < truth + 18), Math.PI * r * r, truth - 8, truth + 6);
            Assert.NotNull(found);
            Assert.Equal(truth, found.Value.AtMm, 1e-6);
        });

    private static double Square(double x) => x * x;

    private static double Aside(Vector3D p, Vector3D from, Vector3D to)
    {
        Vector3D way = (to - from).Unit;
        Vector3D off = p - from;
        return (off - (off.Dot(way) * way)).Length;
    }
}
