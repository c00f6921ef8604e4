using Cavaxis.Anatomy.Axis;
using CsCheck;

namespace Cavaxis.Anatomy.Tests.Axis;

public class AtrialPathTests
{
    private static readonly Gen<(double Span, double Frontal, double Sagittal, double Offset)> AnyAtrium =
        Gen.Select(Gen.Double[15, 110], Gen.Double[-50, 50], Gen.Double[-70, 70], Gen.Double[-0.3, 0.3])
            .Select(t => (t.Item1, t.Item2, t.Item3, t.Item4 * t.Item1));

    [Fact]
    public void The_cannula_leaves_along_the_svc_and_enters_along_the_ivc()
    {
        AnyAtrium.Sample(atrium =>
        {
            double chordDeg = Math.Asin(atrium.Offset / atrium.Span) * 180 / Math.PI;
            Assert.Equal(
                Math.Tan((-(atrium.Frontal / 2) - chordDeg) * Math.PI / 180),
                AtrialPath.SlopeAt(0, atrium.Frontal, atrium.Offset, atrium.Span), 1e-9);
            Assert.Equal(
                Math.Tan(((atrium.Frontal / 2) - chordDeg) * Math.PI / 180),
                AtrialPath.SlopeAt(1, atrium.Frontal, atrium.Offset, atrium.Span), 1e-9);
        });
    }

    [Fact]
    public void The_tilts_at_the_two_mouths_differ_by_the_bend()
    {
        AnyAtrium.Sample(atrium =>
        {
            AtrialPath path = AtrialPath.Of(atrium.Span, atrium.Frontal, atrium.Sagittal, atrium.Offset);
            Assert.Equal(atrium.Frontal, path.FrontalTiltAt(1) - path.FrontalTiltAt(0), 1e-9);
            Assert.Equal(atrium.Sagittal, path.SagittalTiltAt(1) - path.SagittalTiltAt(0), 1e-9);
        });
    }

    [Fact]
    public void The_slope_sums_to_nothing_between_the_mouths()
    {
        // The way ends where the chord ends: ∫ y' = 0. Simpson's rule is exact for the quadratic y'.
        AnyAtrium.Sample(atrium =>
        {
            double ends = AtrialPath.SlopeAt(0, atrium.Frontal, atrium.Offset, atrium.Span) + AtrialPath.SlopeAt(1, atrium.Frontal, atrium.Offset, atrium.Span);
            Assert.Equal(0, ends + (4 * AtrialPath.SlopeAt(0.5, atrium.Frontal, atrium.Offset, atrium.Span)), 1e-9);
        });
    }

    [Fact]
    public void No_other_curve_with_the_same_ends_bends_less()
    {
        // Disturbances t²(1−t)² t^k keep both ends and both tangents; each must cost bending energy ∫ y''².
        Gen.Select(Gen.Double[-0.8, 0.8], Gen.Double[-0.8, 0.8], Gen.Double[-1, 1], Gen.Int[0, 3]).Sample((a, b, size, power) =>
        {
            double cubic = Energy(t => (-4 * a) - (2 * b) + (6 * t * (a + b)));
            double disturbed = Energy(t => (-4 * a) - (2 * b) + (6 * t * (a + b)) + (size * Second(t, power)));
            Assert.True(disturbed >= cubic - 1e-9);
        });

        static double Energy(Func<double, double> curvature)
        {
            double sum = 0;
            for (int i = 0; i < 1000; i++)
            {
                double y = curvature((i + 0.5) / 1000);
                sum += y * y / 1000;
            }

            return sum;
        }

        // Second derivative of t^(k+2) − 2 t^(k+3) + t^(k+4).
        static double Second(double t, int k) =>
            ((k + 2) * (k + 1) * Math.Pow(t, k)) - (2 * (k + 3) * (k + 2) * Math.Pow(t, k + 1)) + ((k + 4) * (k + 3) * Math.Pow(t, k + 2));
    }

    [Fact]
    public void The_length_agrees_with_the_exact_arc_for_ordinary_bends()
    {
        Gen.Select(Gen.Double[15, 110], Gen.Double[-25, 25], Gen.Double[-35, 35], Gen.Double[-0.1, 0.1]).Sample((span, frontal, sagittal, share) =>
        {
            double exact = 0;
            const int Steps = 2000;
            for (int i = 0; i < Steps; i++)
            {
                double t = (i + 0.5) / Steps;
                double f = AtrialPath.SlopeAt(t, frontal, share * span, span);
                double s = AtrialPath.SlopeAt(t, sagittal, 0, span);
                exact += Math.Sqrt(1 + (f * f) + (s * s)) * span / Steps;
            }

            // The next term of the series is ∫ y'⁴/8, at most 0.2 % of the span here.
            Assert.Equal(exact, AtrialPath.LengthMm(span, frontal, sagittal, share * span), 0.002 * span);
        });
    }

    [Fact]
    public void The_arc_runs_from_nothing_to_the_whole_length_and_never_back()
    {
        AnyAtrium.Sample(atrium =>
        {
            AtrialPath path = AtrialPath.Of(atrium.Span, atrium.Frontal, atrium.Sagittal, atrium.Offset);
            Assert.Equal(0, path.ArcMm(0), 1e-12);
            Assert.Equal(path.TotalLengthMm, path.ArcMm(1), 1e-9 * path.TotalLengthMm);
            for (int i = 0; i < 20; i++)
            {
                Assert.True(path.ArcMm((i + 1) / 20.0) > path.ArcMm(i / 20.0));
            }
        });
    }

    [Fact]
    public void Caval_veins_in_line_give_a_straight_way()
    {
        AtrialPath path = AtrialPath.Of(65, 0, 0, 0);

        Assert.Equal(65, path.TotalLengthMm);
        Assert.Equal(0, path.TiltAt(0.3));
    }

    [Fact]
    public void A_way_that_turns_backwards_throws_a_high_jet_up_and_a_low_jet_down()
    {
        double high = AtrialPath.SlopeTowards(0, AtrialPath.SlopeAt(0.1, 40, 0, 65), AtrialPath.TricuspidAzimuthDeg);
        double low = AtrialPath.SlopeTowards(0, AtrialPath.SlopeAt(0.9, 40, 0, 65), AtrialPath.TricuspidAzimuthDeg);

        Assert.True(AtrialPath.AimShiftMm(high, 30) < 0);
        Assert.True(AtrialPath.AimShiftMm(low, 30) > 0);
    }

    [Theory]
    [InlineData(0.2, 0, 0, 0)]
    [InlineData(0.2, 0, 90, -0.2)]
    [InlineData(0, 0.2, 0, -0.2)]
    [InlineData(0, 0.2, 180, 0.2)]
    public void A_tilt_is_seen_from_the_side_it_leans_to(double frontal, double sagittal, double azimuth, double expected) =>
        Assert.Equal(expected, AtrialPath.SlopeTowards(frontal, sagittal, azimuth), 1e-12);
}
