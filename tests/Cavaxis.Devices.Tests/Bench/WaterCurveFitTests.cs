using Cavaxis.Devices.Bench;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Devices.Tests.Bench;

public class WaterCurveFitTests
{
    private static readonly Fluid Cold = new(998.2, 1.002e-3);

    [Fact]
    // Factors up to 15: with more, the narrowest cannula drawn would cost more pressure than a bench curve may have.
    public void A_power_law_is_found_again_exactly() =>
        Gen.Select(Gen.Double[-0.95, -0.02], Gen.Double[1, 15], Gen.Int[4, 12], Gen.Double[4, 9]).Sample((slope, factor, count, diameter) =>
        {
            (WaterCurve curve, WaterCurveQuality quality) = WaterCurveFit.Fit(
                Points(count, diameter, re => factor * Math.Pow(re, slope)), diameter, Cold);
            Assert.Equal(slope, curve.SlopeAt(5000), 1e-6);
            Assert.Equal(1, curve.EulerAt(5000) / (factor * Math.Pow(5000, slope)), 1e-6);
            Assert.True(quality.LargestRelativeResidual < 1e-9);
        });

    [Fact]
    public void A_sum_of_friction_and_exit_head_is_followed_within_a_thousandth()
    {
        static double Euler(double re) => 0.5 * (1.2 + (0.3164 * Math.Pow(re, -0.25) * 36));
        (WaterCurve curve, _) = WaterCurveFit.Fit(Points(8, 5, Euler), 5, Cold);
        for (double re = curve.LowestReynolds; re < curve.HighestReynolds; re *= 1.1)
        {
            Assert.Equal(1, curve.EulerAt(re) / Euler(re), 1e-3);
        }
    }

    [Theory]
    [InlineData(4, 1)]
    [InlineData(5, 2)]
    [InlineData(8, 3)]
    public void The_order_follows_the_number_of_flows(int flows, int order) =>
        Assert.Equal(order, WaterCurveFit.Fit(Points(flows, 5, re => 20 * Math.Pow(re, -0.3)), 5, Cold).Quality.Order);

    [Fact]
    public void A_scattered_curve_still_never_makes_the_thicker_liquid_lose_less() =>
        Gen.Select(Gen.Double[-0.04, 0.04].Array[8], Gen.Double[1, 4]).Sample((noise, thicker) =>
        {
            int i = 0;
            BenchPoint[] points = [.. Points(8, 5, re => 10 * Math.Pow(re, -0.25)).Select(p => p with { DropPa = p.DropPa * (1 + noise[i++]) })];
            (WaterCurve curve, _) = WaterCurveFit.Fit(points, 5, Cold);
            for (double re = curve.LowestReynolds; re < curve.HighestReynolds; re *= 1.3)
            {
                Assert.True(curve.EulerAt(re / thicker) >= curve.EulerAt(re) * 0.96);
            }
        });

    [Fact]
    public void Points_that_no_tube_can_give_are_refused()
    {
        // Eu rising with Re: the drop grows with the cube of flow.
        InputFaultException fault = Assert.Throws<InputFaultException>(() => WaterCurveFit.Fit(Points(6, 5, re => 1e-4 * re), 5, Cold));
        Assert.Equal(FaultCode.Contradiction, fault.Faults[0].Code);
    }

    [Fact]
    public void Unusable_points_are_refused()
    {
        BenchPoint[] sound = Points(6, 5, re => 10 * Math.Pow(re, -0.25));
        BenchPoint[][] broken =
        [
            [],
            [.. sound.Take(3)],
            [.. sound, sound[0] with { DropPa = 0 }],
            [.. sound, sound[0] with { DropPa = double.NaN }],
            [.. sound, sound[0] with { FlowM3PerS = -1e-5 }],
            [.. Enumerable.Repeat(sound[0], 6)],
        ];
        Assert.All(broken, points => Assert.Throws<InputFaultException>(() => WaterCurveFit.Fit(points, 5, Cold)));
        Assert.Throws<InputFaultException>(() => WaterCurveFit.Fit(sound, double.NaN, Cold));
    }

    private static BenchPoint[] Points(int count, double diameterMm, Func<double, double> euler) =>
    [
        .. Enumerable.Range(0, count).Select(i =>
        {
            double flow = (1 + (5.0 * i / (count - 1))) / 60000;
            double velocity = flow / (Math.PI * diameterMm * diameterMm / 4e6);
            double reynolds = Cold.DensityKgPerM3 * velocity * diameterMm * 1e-3 / Cold.ViscosityPaS;
            return new BenchPoint(flow, euler(reynolds) * Cold.DensityKgPerM3 * velocity * velocity);
        }),
    ];
}
