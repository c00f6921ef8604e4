using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Devices.Tests.Hydraulics;

public class CannulaHydraulicsTests
{
    private static readonly Fluid Blood = new(1060, 3e-3);

    // Eu = 10 Re^(-1/4): a smooth turbulent tube.
    private static readonly WaterCurve Curve = new(5, [Math.Log(10), -0.25], 3000, 30_000, 0.02);

    private static Cannula Return17 => DeviceCatalogue.BuiltIn.Cannula("return-arterial-17fr-16cm");

    private static Cannula Measured => Return17 with { WaterCurve = new Dictionary<int, WaterCurve> { [0] = Curve } };

    [Fact]
    public void A_bench_curve_takes_the_place_of_the_geometric_drop_but_not_of_the_shares()
    {
        LumenFlow bench = CannulaHydraulics.At(Measured, LumenPurpose.Return, 4, Blood);
        LumenFlow drawn = CannulaHydraulics.At(Return17, LumenPurpose.Return, 4, Blood);
        double velocity = 4 / 60000.0 / (Math.PI * 2.5e-3 * 2.5e-3);
        double reynolds = 1060 * velocity * 5e-3 / 3e-3;
        Assert.Equal(1, bench.PressureDropPa / (10 * Math.Pow(reynolds, -0.25) * 1060 * velocity * velocity), 1e-12);
        Assert.Equal(drawn.HoleShares, bench.HoleShares);
        Assert.True(bench.FromBenchCurve);
        Assert.False(bench.BeyondBenchRange);
        Assert.False(drawn.FromBenchCurve);
    }

    [Fact]
    public void Liquids_at_the_same_reynolds_number_have_the_same_euler_number()
    {
        // Three times the viscosity at three times the flow, same density: nine times the pressure.
        Fluid thin = new(1060, 1e-3);
        LumenFlow first = CannulaHydraulics.At(Measured, LumenPurpose.Return, 1.5, thin);
        LumenFlow second = CannulaHydraulics.At(Measured, LumenPurpose.Return, 4.5, Blood);
        Assert.Equal(9, second.PressureDropPa / first.PressureDropPa, 1e-9);
    }

    [Fact]
    public void Beyond_the_bench_the_flag_rises_and_the_spread_widens()
    {
        LumenFlow inside = CannulaHydraulics.At(Measured, LumenPurpose.Return, 3, Blood);
        LumenFlow outside = CannulaHydraulics.At(Measured, LumenPurpose.Return, 0.5, Blood);
        Assert.True(outside.BeyondBenchRange);
        Assert.True(outside.RelativeSd > 2 * inside.RelativeSd);
    }

    [Fact]
    public void A_bench_curve_is_continuous_at_the_ends_of_its_range()
    {
        Assert.Equal(1, Curve.EulerAt(3000 * (1 - 1e-9)) / Curve.EulerAt(3000), 1e-8);
        Assert.Equal(1, Curve.EulerAt(30_000 * (1 + 1e-9)) / Curve.EulerAt(30_000), 1e-8);
    }

    [Fact]
    public void An_extrapolated_curve_never_gets_steeper_than_laminar_or_rises()
    {
        WaterCurve bent = new(5, [60, -12, 0.6], 3000, 20_000, 0.02);
        double low = Math.Log(bent.EulerAt(100) / bent.EulerAt(200)) / Math.Log(2);
        double high = Math.Log(bent.EulerAt(80_000) / bent.EulerAt(40_000)) / Math.Log(2);
        Assert.Equal(1, low, 1e-9);
        Assert.InRange(high, -1 - 1e-9, 1e-9);
    }

    [Fact]
    public void The_flow_for_a_drop_is_the_inverse_of_the_drop() =>
        Gen.Select(Gen.Int[0, DeviceCatalogue.BuiltIn.Cannulae.Count - 1].Select(i => DeviceCatalogue.BuiltIn.Cannulae[i]), Gen.Double[0.05, 3]).Sample(
            (cannula, flow) =>
            {
                LumenPurpose purpose = cannula.Lumens[0].Purpose;
                double drop = CannulaHydraulics.At(cannula, purpose, flow, Blood).PressureDropPa;
                if (drop <= 2e5)
                {
                    Assert.Equal(flow, CannulaHydraulics.FlowLPerMinFor(cannula, purpose, drop, Blood), 1e-7);
                }
            });

    [Fact]
    public void A_drop_that_no_accepted_flow_needs_gives_the_highest_flow() =>
        Assert.Equal(
            CannulaHydraulics.HighestFlowLPerMin,
            CannulaHydraulics.FlowLPerMinFor(DeviceCatalogue.BuiltIn.Cannula("drain-multi-29fr-38cm"), LumenPurpose.Drainage, 2e5, new Fluid(1000, 7e-4)));

    [Fact]
    public void A_lumen_that_the_cannula_does_not_have_is_refused()
    {
        InputFaultException fault = Assert.Throws<InputFaultException>(
            () => CannulaHydraulics.At(Return17, LumenPurpose.Drainage, 3, Blood));
        Assert.Equal(FaultCode.NotFound, fault.Faults[0].Code);
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(15.1)]
    [InlineData(double.NaN)]
    public void Impossible_flows_are_refused(double flow) =>
        Assert.Throws<InputFaultException>(() => CannulaHydraulics.At(Return17, LumenPurpose.Return, flow, Blood));

    [Fact]
    public void No_flow_through_a_measured_cannula_means_no_drop() =>
        Assert.Equal(0, CannulaHydraulics.At(Measured, LumenPurpose.Return, 0, Blood).PressureDropPa);
}
