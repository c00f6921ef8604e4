using Cavaxis.Anatomy.Body;
using Cavaxis.Circulation.Axis;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Running;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Planning.Tests.Running;

public class RunningPortsTests
{
    private const string Wide = "bicaval-31fr-31cm";

    [Fact]
    public void A_deeper_femoral_drainage_cannula_drains_nearer_to_the_head()
    {
        double Drained(double depth) => Middle(Ports(RunningConfiguration.VvTwoSite, Drainage(depth)).Drainage);
        Assert.True(Drained(42) < Drained(36) - 0.1);
        Assert.True(Drained(48) < Drained(42) - 0.1);
    }

    [Fact]
    public void A_return_port_turned_away_no_longer_feeds_the_vestibule()
    {
        double Caught(double turn) => Ports(RunningConfiguration.VvDualLumen, DualLumen(28, turn)).VenousReturn[(int)AxisCell.Vestibule];
        Assert.True(Caught(0) > Caught(30));
        Assert.True(Caught(30) > Caught(80));
        Assert.Equal(Caught(60), Caught(-60), 1e-12);
        Assert.Equal(0, Caught(120));
    }

    [Fact]
    public void From_the_longer_left_side_the_same_depth_reaches_less_far()
    {
        AxisPorts right = Ports(RunningConfiguration.VvDualLumen, DualLumen(30, 0));
        AxisPorts left = Ports(RunningConfiguration.VvDualLumen, DualLumen(30, 0) with { Side = BodySide.Left });
        Assert.True(Middle(left.Drainage) < Middle(right.Drainage));
    }

    [Fact]
    public void Every_depth_and_turn_within_the_device_gives_shares_of_one() => Gen.Select(Gen.Double[1, 31], Gen.Double[-180, 180]).Sample((depth, turn) =>
    {
        AxisPorts ports = Ports(RunningConfiguration.VvDualLumen, DualLumen(depth, turn));
        return Math.Abs(ports.Drainage.Sum() - 1) < 1e-9 && Math.Abs(ports.VenousReturn.Sum() - 1) < 1e-9 && ports.Drainage.Concat(ports.VenousReturn).All(static s => s is >= 0 and <= 1);
    }, iter: 60);

    [Fact]
    public void Two_cannulae_in_one_place_drain_as_one_and_two_in_two_places_lie_between()
    {
        AxisPorts Of(params RunningCannula[] cannulae) => Ports(RunningConfiguration.VvTwoSite, cannulae);
        AxisPorts deep = Of(Drainage(46));
        AxisPorts shallow = Of(Drainage(38));
        Assert.All(Enumerable.Range(0, AxisPorts.CellCount), i => Assert.Equal(deep.Drainage[i], Of(Drainage(46), Drainage(46)).Drainage[i], 0.02));
        Assert.InRange(Middle(Of(Drainage(46), Drainage(38)).Drainage), Middle(deep.Drainage), Middle(shallow.Drainage));
    }

    [Fact]
    public void Without_a_depth_the_usual_place_is_taken_and_said()
    {
        CirculationSetup setup = Read(RunningConfiguration.VvTwoSite, Drainage(44) with { DepthCm = null }, Return(15));
        Assert.True(AxisPorts.Default.Drainage.SequenceEqual(setup.Parameters.Ports.Drainage));
        Assert.False(AxisPorts.Default.VenousReturn.SequenceEqual(setup.Parameters.Ports.VenousReturn));
        Assert.Contains(setup.Assumed, static a => a.Field == "running.cannulae[0].depthCm" && a.UsedInstead.Contains("usually lies", StringComparison.Ordinal) && a.Matters.Contains("recirculation", StringComparison.Ordinal));
        Assert.DoesNotContain(setup.Assumed, static a => a.Field == "running.cannulae[1].depthCm");
        Assert.Contains("return-venous-21fr-16cm", Assert.Single(setup.Circuit!.Tips), StringComparison.Ordinal);
    }

    [Fact]
    public void An_assumed_device_is_in_its_usual_place_and_that_is_said()
    {
        CirculationSetup setup = Read(RunningConfiguration.VvDualLumen);
        Assert.Equal(0.7, setup.Parameters.Ports.VenousReturn[(int)AxisCell.Vestibule], 1e-12);
        Assert.Equal(2, setup.Assumed.Count(static a => a.Field == "running.cannulae.depthCm"));
        Assert.Empty(setup.Circuit!.Tips);
    }

    [Fact]
    public void Side_route_and_turn_that_are_not_given_are_assumed_and_said()
    {
        CirculationSetup setup = Read(RunningConfiguration.VvDualLumen, new RunningCannula { Role = CannulaRole.DualLumen, Device = Wide, DepthCm = Given(28) });
        Assert.Equal<IEnumerable<double>>(DualLumenPorts(28), setup.Parameters.Ports.VenousReturn);
        foreach (string part in new[] { "side", "route", "rotationDeg" })
        {
            Assert.Single(setup.Assumed, a => a.Field == $"running.cannulae[0].{part}");
        }
    }

    [Fact]
    public void With_return_to_an_artery_alone_nothing_is_assumed_about_a_venous_return()
    {
        CirculationSetup setup = Read(RunningConfiguration.VaFemoral, Drainage(44), new RunningCannula { Role = CannulaRole.ArterialReturn, Device = "return-arterial-19fr-16cm" });
        Assert.DoesNotContain(setup.Assumed, static a => a.Field.EndsWith("depthCm", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("depthCm")]
    [InlineData("route")]
    public void What_cannot_lie_there_is_refused_with_its_field(string field)
    {
        RunningCannula cannula = field == "depthCm" ? DualLumen(32, 0) : DualLumen(28, 0) with { Route = AccessRoute.FemoralArtery };
        InputFault fault = Assert.Single(Assert.Throws<InputFaultException>(() => Read(RunningConfiguration.VvDualLumen, cannula)).Faults);
        Assert.Equal((FaultCode.Contradiction, $"running.cannulae[0].{field}"), (fault.Code, fault.Field));
    }

    private static double[] DualLumenPorts(double depth) => [.. Ports(RunningConfiguration.VvDualLumen, DualLumen(depth, 0)).VenousReturn];

    private static double Middle(IReadOnlyList<double> shares)
    {
        AxisCell[] line =
        [
            AxisCell.UpperSuperiorCava, AxisCell.LowerSuperiorCava, AxisCell.UpperAtrium, AxisCell.MiddleAtrium, AxisCell.LowerAtrium,
            AxisCell.ThoracicCava, AxisCell.HepaticCava, AxisCell.RenalCava, AxisCell.LowerCava,
        ];
        return line.Select((cell, place) => place * shares[(int)cell]).Sum();
    }

    private static RunningCannula Drainage(double depth) => new()
    {
        Role = CannulaRole.Drainage,
        Device = "drain-multi-25fr-55cm",
        Route = AccessRoute.FemoralVein,
        Side = BodySide.Right,
        DepthCm = Given(depth),
    };

    private static RunningCannula Return(double depth) => new()
    {
        Role = CannulaRole.VenousReturn,
        Device = "return-venous-21fr-16cm",
        Route = AccessRoute.Jugular,
        Side = BodySide.Right,
        DepthCm = Given(depth),
    };

    private static RunningCannula DualLumen(double depth, double turn) => new()
    {
        Role = CannulaRole.DualLumen,
        Device = Wide,
        Route = AccessRoute.Jugular,
        Side = BodySide.Right,
        DepthCm = Given(depth),
        RotationDeg = Given(turn),
    };

    private static AxisPorts Ports(RunningConfiguration configuration, params RunningCannula[] cannulae) => Read(configuration, cannulae).Parameters.Ports;

    private static CirculationSetup Read(RunningConfiguration configuration, params RunningCannula[] cannulae) => CirculationFromCase.Read(
        Cases.Bare with { Running = new RunningSection { Configuration = configuration, FlowLPerMin = Given(4), Cannulae = cannulae } }, DeviceCatalogue.BuiltIn);

    private static Measurement Given(double value) => new(value, 0, true);
}
