using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Devices.Tests.Hydraulics;

public class LumenHydraulicsTests
{
    private const double Slack = 1 + 1e-9;
    private static readonly Fluid Blood = new(1060, 3e-3);
    private static readonly HoleGroup OpenEnd = new("return end", 0, 0, 1, 5, HoleFacing.End);

    public static TheoryData<LumenPurpose> Purposes => [LumenPurpose.Drainage, LumenPurpose.Return];

    [Fact]
    public void A_plain_return_tube_loses_its_friction_and_its_exit_head()
    {
        Lumen tube = new(LumenPurpose.Return, [TubeSegment.Round(180, 5)], [OpenEnd]);
        LumenFlow flow = LumenHydraulics.At(tube, 5e-5, Blood);
        double velocity = 5e-5 / (Math.PI * 2.5e-3 * 2.5e-3);
        double head = 0.5 * 1060 * velocity * velocity;
        double reynolds = 1060 * velocity * 5e-3 / 3e-3;
        double expected = head * (1 + (0.3164 * Math.Pow(reynolds, -0.25) * 180 / 5));
        Assert.Equal(1, flow.PressureDropPa / expected, 5e-3);
        Assert.Equal(reynolds, flow.LargestReynolds, 1e-6);
        Assert.Equal(velocity, flow.LargestHoleVelocityMPerS, 1e-9);
    }

    [Fact]
    public void A_plain_drainage_tube_loses_its_entrance_its_friction_and_shows_its_velocity_head()
    {
        Lumen tube = new(LumenPurpose.Drainage, [TubeSegment.Round(500, 7)], [OpenEnd with { DiameterMm = 7 }]);
        double velocity = 6e-5 / (Math.PI * 3.5e-3 * 3.5e-3);
        double head = 0.5 * 1060 * velocity * velocity;
        double reynolds = 1060 * velocity * 7e-3 / 2e-3;
        double expected = head * (1.5 + (0.3164 * Math.Pow(reynolds, -0.25) * 500 / 7));
        Assert.Equal(1, LumenHydraulics.At(tube, 6e-5, new Fluid(1060, 2e-3)).PressureDropPa / expected, 5e-3);
    }

    [Fact]
    public void A_long_creeping_tube_is_hagen_poiseuille()
    {
        // Re is about 1: the friction is 128 μ L Q / (π d⁴) and the rest is below a thousandth.
        Lumen tube = new(LumenPurpose.Return, [TubeSegment.Round(2000, 4)], [OpenEnd with { DiameterMm = 4 }]);
        double flow = Math.PI * 4e-3 * 3e-3 / (4 * 1060);
        double expected = 128 * 3e-3 * 2 * flow / (Math.PI * Math.Pow(4e-3, 4));
        Assert.Equal(1, LumenHydraulics.At(tube, flow, Blood).PressureDropPa / expected, 5e-3);
    }

    [Fact]
    public void Two_drainage_rows_satisfy_the_manifold_equations_by_hand()
    {
        // One row of two holes at the tip, one of two nearer the hub, no friction worth naming in between, water-thin liquid.
        Fluid thin = new(1000, 2e-4);
        HoleGroup near = new("near", 10.01, 0, 2, 2, HoleFacing.AllRound);
        HoleGroup far = new("far", 10, 0, 2, 2, HoleFacing.AllRound);
        Lumen lumen = new(LumenPurpose.Drainage, [TubeSegment.Round(20, 6)], [near, far]);
        LumenFlow flow = LumenHydraulics.At(lumen, 3e-5, thin);
        double bore = Math.PI * 3e-3 * 3e-3;
        double open = 2 * Math.PI * 1e-3 * 1e-3;
        double tip = flow.HoleShares[1] * 3e-5;
        double suction = 0.5 * 1000 * Math.Pow(tip / open / 0.62, 2) + (1000 * Math.Pow(tip / bore, 2));
        double hub = 0.62 * open * Math.Sqrt(2 * suction / 1000);
        Assert.Equal(1, (tip + hub) / 3e-5, 0.01);
        Assert.True(flow.HoleShares[0] > flow.HoleShares[1]);
    }

    [Theory]
    [MemberData(nameof(Purposes))]
    public void Shares_lie_between_zero_and_one_and_sum_to_one(LumenPurpose purpose) =>
        SampleLumens.Of(purpose).Sample(
            c =>
            {
                LumenFlow flow = LumenHydraulics.At(c.Lumen, c.Flow, c.Fluid);
                Assert.All(flow.HoleShares, s => Assert.InRange(s, 0, 1));
                Assert.InRange(flow.HoleShares.Sum(), 1 - 1e-12, 1 + 1e-12);
                Assert.True(flow.PressureDropPa > 0 && double.IsFinite(flow.PressureDropPa));
                Assert.InRange(flow.RelativeSd, 0.01, 1);
            },
            iter: 1000);

    [Theory]
    [MemberData(nameof(Purposes))]
    public void More_flow_never_loses_less(LumenPurpose purpose) =>
        Gen.Select(SampleLumens.Of(purpose), Gen.Double[1.001, 1.25]).Sample(
            (c, more) => Assert.True(
                LumenHydraulics.At(c.Lumen, c.Flow * more, c.Fluid).PressureDropPa
                > LumenHydraulics.At(c.Lumen, c.Flow, c.Fluid).PressureDropPa),
            iter: 1000);

    [Theory]
    [MemberData(nameof(Purposes))]
    public void A_more_viscous_liquid_never_loses_less(LumenPurpose purpose) =>
        Gen.Select(SampleLumens.Of(purpose), Gen.Double[1, 4]).Sample(
            (c, thicker) => Assert.True(
                LumenHydraulics.At(c.Lumen, c.Flow, c.Fluid with { ViscosityPaS = c.Fluid.ViscosityPaS * thicker }).PressureDropPa * Slack
                >= LumenHydraulics.At(c.Lumen, c.Flow, c.Fluid).PressureDropPa),
            iter: 1000);

    [Theory]
    [MemberData(nameof(Purposes))]
    public void A_longer_hub_stretch_never_loses_less(LumenPurpose purpose) =>
        Gen.Select(SampleLumens.Of(purpose), Gen.Double[0, 300]).Sample(
            (c, extra) =>
            {
                TubeSegment hub = c.Lumen.Segments[0];
                Lumen longer = c.Lumen with { Segments = [hub with { LengthMm = hub.LengthMm + extra }, .. c.Lumen.Segments.Skip(1)] };
                Assert.True(
                    LumenHydraulics.At(longer, c.Flow, c.Fluid).PressureDropPa * Slack
                    >= LumenHydraulics.At(c.Lumen, c.Flow, c.Fluid).PressureDropPa);
            },
            iter: 1000);

    [Theory]
    [MemberData(nameof(Purposes))]
    public void A_narrower_cannula_never_loses_less(LumenPurpose purpose) =>
        Gen.Select(SampleLumens.Of(purpose), Gen.Double[0.7, 1]).Sample(
            (c, scale) => Assert.True(
                LumenHydraulics.At(SampleLumens.Scaled(c.Lumen, scale, scale), c.Flow, c.Fluid).PressureDropPa * Slack
                >= LumenHydraulics.At(c.Lumen, c.Flow, c.Fluid).PressureDropPa),
            iter: 1000);

    [Fact]
    public void The_holes_nearest_the_pump_drain_the_most_of_equal_groups() =>
        Gen.Select(Gen.Double[4, 9], Gen.Double[0.2, 0.4], Gen.Double[1, 5], SampleLumens.Liquids).Sample((bore, hole, litres, fluid) =>
        {
            HoleGroup[] groups = [.. new[] { 180, 120, 60, 10 }.Select(x => new HoleGroup("stage", x, 8, 4, hole * bore, HoleFacing.AllRound))];
            LumenFlow flow = LumenHydraulics.At(new Lumen(LumenPurpose.Drainage, [TubeSegment.Round(550, bore)], groups), litres / 60000, fluid);
            Assert.Equal(flow.HoleShares.OrderByDescending(s => s), flow.HoleShares);
        });

    [Fact]
    public void The_open_end_of_a_return_cannula_takes_the_most()
    {
        HoleGroup sides = new("return side holes", 15, 15, 6, 1.5, HoleFacing.AllRound);
        LumenFlow flow = LumenHydraulics.At(new Lumen(LumenPurpose.Return, [TubeSegment.Round(180, 5)], [sides, OpenEnd]), 6e-5, Blood);
        Assert.True(flow.HoleShares[1] > 0.7);
    }

    [Theory]
    [MemberData(nameof(Purposes))]
    public void The_stretch_beyond_the_last_opening_plays_no_part(LumenPurpose purpose)
    {
        HoleGroup port = new("return port", 90, 8, 1, 5, HoleFacing.OneSide);
        Lumen whole = new(purpose, [TubeSegment.Round(200, 5), TubeSegment.Round(80, 5)], [port]);
        Lumen blocked = new(purpose, [TubeSegment.Round(200, 5), TubeSegment.Round(80, 1)], [port]);
        Assert.Equal(LumenHydraulics.At(whole, 5e-5, Blood).PressureDropPa, LumenHydraulics.At(blocked, 5e-5, Blood).PressureDropPa);
    }

    [Fact]
    public void No_flow_means_no_drop_and_still_shares()
    {
        HoleGroup sides = new("tip holes", 15, 15, 6, 1.5, HoleFacing.AllRound);
        LumenFlow still = LumenHydraulics.At(new Lumen(LumenPurpose.Drainage, [TubeSegment.Round(180, 5)], [sides, OpenEnd]), 0, Blood);
        Assert.Equal(0, still.PressureDropPa);
        Assert.Equal(0, still.LargestHoleVelocityMPerS);
        Assert.Equal(1, still.HoleShares.Sum(), 1e-12);
    }

    [Fact]
    public void A_remembered_geometry_is_less_certain_than_a_labelled_one()
    {
        Lumen tube = new(LumenPurpose.Return, [TubeSegment.Round(180, 5)], [OpenEnd]);
        Assert.True(
            LumenHydraulics.At(tube, 5e-5, Blood, GeometryTolerance.Generic).RelativeSd
            > LumenHydraulics.At(tube, 5e-5, Blood, GeometryTolerance.Labelled).RelativeSd);
    }

    [Theory]
    [InlineData(-1e-9)]
    [InlineData(1e-2)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Impossible_flows_are_refused(double flow)
    {
        Lumen tube = new(LumenPurpose.Return, [TubeSegment.Round(180, 5)], [OpenEnd]);
        InputFaultException fault = Assert.Throws<InputFaultException>(() => LumenHydraulics.At(tube, flow, Blood));
        Assert.Equal(FaultCode.OutOfRange, fault.Faults[0].Code);
    }

    [Theory]
    [InlineData(0, 3e-3)]
    [InlineData(1060, 0)]
    [InlineData(double.NaN, 3e-3)]
    [InlineData(1060, double.NaN)]
    public void Impossible_liquids_are_refused(double density, double viscosity)
    {
        Lumen tube = new(LumenPurpose.Return, [TubeSegment.Round(180, 5)], [OpenEnd]);
        Assert.Throws<InputFaultException>(() => LumenHydraulics.At(tube, 5e-5, new Fluid(density, viscosity)));
    }

    [Fact]
    public void Impossible_lumens_are_refused()
    {
        Lumen tube = new(LumenPurpose.Return, [TubeSegment.Round(180, 5)], [OpenEnd]);
        Lumen[] broken =
        [
            tube with { Segments = [] },
            tube with { HoleGroups = [] },
            tube with { Segments = [TubeSegment.Round(-1, 5)] },
            tube with { Segments = [TubeSegment.Round(180, double.NaN)] },
            tube with { Segments = [new TubeSegment(180, 5, 0)] },
            tube with { HoleGroups = [OpenEnd with { Count = 0 }] },
            tube with { HoleGroups = [OpenEnd with { DiameterMm = 0 }] },
            tube with { HoleGroups = [OpenEnd with { FromTipMm = double.NaN }] },
            tube with { HoleGroups = [OpenEnd with { SpanMm = -1 }] },
        ];
        Assert.All(broken, l => Assert.Throws<InputFaultException>(() => LumenHydraulics.At(l, 5e-5, Blood)));
    }
}
