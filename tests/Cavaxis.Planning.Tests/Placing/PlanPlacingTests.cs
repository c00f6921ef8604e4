using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Placing;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Tests.Placing;

public class PlanPlacingTests
{
    private static readonly PlanningOptions Options = new() { Anatomies = Cases.FewAnatomies };
    private static readonly CaseFile Case = Cases.For(SupportGoal.GasExchange);
    private static readonly PlanningResult Planned = Cases.Plan(Case);
    private static readonly PlacingPatient Patient = new(Case, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, Options);

    [Fact]
    public void At_the_planned_depth_and_no_turn_every_plan_keeps_its_own_probabilities()
    {
        foreach (CannulationPlan plan in Planned.Plans)
        {
            PlacingFit fit = Patient.Of(plan).Fit([]);
            Assert.Equal(plan.ProbabilityAllPortsInZoneBlind, fit.ProbabilityAllPortsInZone, 12);
            foreach (PlacedPorts placed in fit.Cannulae)
            {
                PlacedCannula cannula = plan.Cannulae.Single(c => c.Role == placed.Role);
                Assert.Equal(cannula.Fit!.Ports, placed.Ports);
            }
        }
    }

    [Theory]
    [InlineData(ConfigurationKind.VvFemoralJugular, CannulaRole.VenousReturn, 1)]
    [InlineData(ConfigurationKind.VvFemoralJugular, CannulaRole.Drainage, -1)]
    [InlineData(ConfigurationKind.VvDualLumenJugular, CannulaRole.DualLumen, 1)]
    public void A_centimetre_deeper_moves_every_port_a_centimetre_along_the_vein(ConfigurationKind kind, CannulaRole role, int direction)
    {
        PlanPlacing placing = Placing(kind);
        double depth = placing.Planned.Single(p => p.Role == role).DepthCm - 2;
        PlacedPorts before = placing.Fit([new CannulaPlace(role, depth)]).Cannulae.Single(c => c.Role == role);
        PlacedPorts after = placing.Fit([new CannulaPlace(role, depth + 1)]).Cannulae.Single(c => c.Role == role);
        Assert.Equal(before.TipBelowScajMm.Value + (10 * direction), after.TipBelowScajMm.Value, 9);
        Assert.All(before.Ports.Zip(after.Ports), pair => Assert.Equal(pair.First.BelowScajMm.Value + (10 * direction), pair.Second.BelowScajMm.Value, 9));
    }

    [Fact]
    public void Far_from_the_planned_depth_no_port_lies_in_its_zone_together_with_the_others()
    {
        PlanPlacing placing = Placing(ConfigurationKind.VvFemoralJugular);
        Assert.True(placing.Fit([]).ProbabilityAllPortsInZone > 0.3);
        Assert.Equal(0, placing.Fit([new CannulaPlace(CannulaRole.VenousReturn, 2)]).ProbabilityAllPortsInZone);
    }

    [Fact]
    public void Drawing_both_cannulae_back_moves_their_ports_apart_by_the_sum()
    {
        PlanPlacing placing = Placing(ConfigurationKind.VvFemoralJugular);
        CannulaPlace[] back = [.. placing.Planned.Select(static p => p with { DepthCm = p.DepthCm - 1 })];
        Assert.Equal(placing.Fit([]).PortDistanceMm!.Value + 20, placing.Fit(back).PortDistanceMm!.Value, 9);
    }

    [Fact]
    public void Turning_a_side_port_away_only_ever_loses_and_turning_either_way_loses_alike()
    {
        PlanPlacing placing = Placing(ConfigurationKind.VvDualLumenJugular);
        Assert.True(placing.CanTurn(CannulaRole.DualLumen));
        double depth = placing.Planned[0].DepthCm;
        double before = placing.Fit([]).ProbabilityAllPortsInZone;
        Assert.True(before > 0);
        foreach (double turn in new double[] { 10, 25, 40, 60, 90, 180 })
        {
            double away = placing.Fit([new CannulaPlace(CannulaRole.DualLumen, depth, turn)]).ProbabilityAllPortsInZone;
            Assert.True(away <= before);
            Assert.Equal(away, placing.Fit([new CannulaPlace(CannulaRole.DualLumen, depth, -turn)]).ProbabilityAllPortsInZone);
            before = away;
        }

        Assert.Equal(0, before);
    }

    [Fact]
    public void A_cannula_that_returns_at_its_end_cannot_be_turned() =>
        Assert.False(Placing(ConfigurationKind.VvFemoralJugular).CanTurn(CannulaRole.VenousReturn));

    [Theory]
    [InlineData(-1, 0, "depthCm")]
    [InlineData(200, 0, "depthCm")]
    [InlineData(10, 181, "turnDeg")]
    [InlineData(double.NaN, 0, "depthCm")]
    public void A_place_that_the_device_cannot_have_is_refused(double depthCm, double turnDeg, string field) => Assert.Equal(
        field,
        Assert.Throws<InputFaultException>(() => Placing(ConfigurationKind.VvFemoralJugular)
            .Fit([new CannulaPlace(CannulaRole.VenousReturn, depthCm, turnDeg)])).Faults[0].Field);

    [Fact]
    public void Choosing_a_plan_afterwards_says_what_planning_with_that_rank_says()
    {
        PlanningResult expected = Planner.Plan(Case, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, Options with { ChosenRank = 3 });
        PlanningResult chosen = Patient.Choose(Planned, 3);
        Assert.Equal(3, chosen.ChosenPlan);
        Assert.Equal(expected.NextMeasurements, chosen.NextMeasurements);
        Assert.Equal(expected.Steps.Select(static s => s.ToString()), chosen.Steps.Select(static s => s.ToString()));
        Assert.Throws<InputFaultException>(() => Patient.Choose(Planned, Planned.Plans.Count + 1));
    }

    private static PlanPlacing Placing(ConfigurationKind kind) => Patient.Of(Planned.Plans.First(p => p.Configuration == kind));
}
