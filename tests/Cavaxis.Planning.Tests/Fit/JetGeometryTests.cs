using Cavaxis.Anatomy.Axis;
using Cavaxis.Planning.Fit;
using CsCheck;

namespace Cavaxis.Planning.Tests.Fit;

/// <summary>The aim of a side jet, and the stretch of ports from which it meets the annulus, against a scan.</summary>
public class JetGeometryTests
{
    private static readonly Gen<Atrium> Moderate =
        from span in Gen.Double[35, 95]
        from frontal in Gen.Double[-15, 30]
        from sagittal in Gen.Double[-10, 50]
        from offset in Gen.Double[-10, 10]
        from fraction in Gen.Double[0.35, 0.8]
        from distance in Gen.Double[0.2, 0.55]
        from radius in Gen.Double[8, 24]
        select new Atrium(span, frontal, sagittal, offset, fraction, distance * span, radius);

    [Fact]
    public void In_a_straight_atrium_the_jet_aims_at_its_own_height()
    {
        JetGeometry jet = new(70, 70, 0, 0, 0, 0.6, 30, 18);
        Assert.Equal(33, jet.AimMm(33), 9);
        (double from, double to) = jet.PortWindow();
        Assert.Equal(42 - 18, from, 3);
        Assert.Equal(42 + 18, to, 3);
        Assert.Equal(Math.Atan(18.0 / 30) * 180 / Math.PI, jet.RotationWindowDeg(), 9);
    }

    [Fact]
    public void The_aim_falls_with_the_port_wherever_the_bend_is_moderate() => Moderate.Where(a => !a.IsSteep).Sample(atrium =>
    {
        JetGeometry jet = atrium.Jet;
        return Enumerable.Range(0, 100).All(
            i => jet.AimMm(atrium.Length * (i + 1) / 100) > jet.AimMm(atrium.Length * i / 100));
    });

    [Fact]
    public void Every_port_of_the_window_aims_into_the_annulus_and_none_outside_it() => Moderate.Where(a => !a.IsSteep).Sample(atrium =>
    {
        JetGeometry jet = atrium.Jet;
        (double from, double to) = jet.PortWindow();
        double centre = atrium.Fraction * atrium.Length;
        for (int i = 0; i <= 200; i++)
        {
            double port = atrium.Length * i / 200;
            double miss = Math.Abs(jet.AimMm(port) - centre) - atrium.Radius;
            bool inWindow = port >= from - 1e-9 && port <= to + 1e-9;
            if (inWindow != miss <= 0 && Math.Abs(miss) > 1e-3)
            {
                return false;
            }
        }

        return true;
    });

    [Fact]
    public void Where_no_port_of_the_atrium_aims_at_the_annulus_the_window_is_empty()
    {
        // A small valve right under the superior junction, and an atrium that leans away from it: even the highest port
        // throws its jet below the annulus.
        JetGeometry jet = new(70, 70, -40, 0, 0, 0.05, 30, 3);
        Assert.All(Enumerable.Range(0, 71), port => Assert.True(jet.AimMm(port) - 3.5 > 3));
        (double from, double to) = jet.PortWindow();
        Assert.True(from > to);
    }

    [Fact]
    public void A_wider_annulus_never_narrows_the_window_nor_the_rotation() => Moderate.Where(a => !a.IsSteep).Sample(atrium =>
    {
        JetGeometry narrow = atrium.Jet;
        JetGeometry wide = (atrium with { Radius = atrium.Radius * 1.3 }).Jet;
        (double from, double to) = narrow.PortWindow();
        (double wideFrom, double wideTo) = wide.PortWindow();
        return wideFrom <= from + 1e-6 && wideTo >= to - 1e-6 && wide.RotationWindowDeg() > narrow.RotationWindowDeg();
    });

    private sealed record Atrium(
        double Span, double Frontal, double Sagittal, double Offset, double Fraction, double Distance, double Radius)
    {
        public double Length => AtrialPath.LengthMm(Span, Frontal, Sagittal, Offset);

        public JetGeometry Jet => new(Length, Span, Frontal, Sagittal, Offset, Fraction, Distance, Radius);

        /// <summary>
        /// The aim turns back where tilt times distance changes faster than the port moves. The tilt's rate is linear along
        /// the cubic, y'' = a (6t - 4) + b (6t - 2), so its greatest size lies at an end.
        /// </summary>
        public bool IsSteep
        {
            get
            {
                AtrialPath path = AtrialPath.Of(Span, Frontal, Sagittal, Offset);
                double rate = Greatest(path.FrontalStart, path.FrontalEnd) + Greatest(path.SagittalStart, path.SagittalEnd);
                return rate * Distance / Length >= 1;
            }
        }

        private static double Greatest(double a, double b) =>
            Math.Max(Math.Abs((-4 * a) - (2 * b)), Math.Abs((2 * a) + (4 * b)));
    }
}
