using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Placing;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Tests.Placing;

/// <summary>The circulation of a plan that is moved, on a case that says enough for the model.</summary>
public class PlacingCirculationTests
{
    /// <summary>Settled from another state, contents end within about half a percent of each other (SettleForComparison).</summary>
    private const double SettledWithin = 0.6;

    private static readonly CaseFile Case = Cases.Demo("tall-man-severe-lung-failure");
    private static readonly PlanningOptions Options = new() { Anatomies = Cases.FewAnatomies, Circulation = true, PlansPerConfiguration = 1 };
    private static readonly PlanningResult Planned = Planner.Plan(Case, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, Options);
    private static readonly PlacingPatient Patient = new(Case, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, Options);

    [Theory]
    [InlineData(ConfigurationKind.VvFemoralJugular)]
    [InlineData(ConfigurationKind.VvDualLumenJugular)]
    [InlineData(ConfigurationKind.VaFemoral)]
    public void At_the_planned_depth_the_circulation_is_that_of_the_plan(ConfigurationKind kind)
    {
        CannulationPlan plan = Of(kind);
        PlacingCirculation placed = Patient.Of(plan).Circulation([]);
        CirculationOutlook outlook = plan.Circulation!;
        Same(outlook.RightArmSaturationPercent, placed.RightArmSaturationPercent!);
        Assert.Equal(outlook.RecirculationPercent is null, placed.RecirculationPercent is null);
        if (outlook.RecirculationPercent is Estimate expected)
        {
            Same(expected, placed.RecirculationPercent!);
        }
    }

    [Fact]
    public void The_connected_patients_are_those_that_the_plan_stands_on()
    {
        CannulationPlan plan = Of(ConfigurationKind.VvDualLumenJugular);
        ConnectedPlan connected = Patient.Connected(plan);
        Assert.Equal(plan.Circulation!.Members, connected.Members.Count);
        Assert.Empty(connected.Reason);
        double[] shares = [.. CirculationSimulator.SettleForComparison(connected.Members)
            .Select(static state => state.RequireSummary()[CirculationQuantity.RecirculationPercent])];
        Same(plan.Circulation.RecirculationPercent!, Estimate.FromSamples(shares, Origin.Calculated));
    }

    [Fact]
    public void Going_on_from_another_place_ends_where_starting_anew_ends()
    {
        PlanPlacing placing = Patient.Of(Of(ConfigurationKind.VvFemoralJugular));
        CannulaPlace away = new(CannulaRole.Drainage, placing.Planned.Single(p => p.Role == CannulaRole.Drainage).DepthCm + 8);
        placing.Circulation([]);
        PlacingCirculation reached = placing.Circulation([away]);
        PlacingCirculation anew = Patient.Of(placing.Plan).Circulation([away]);
        Assert.Equal(anew.RecirculationPercent!.Value, reached.RecirculationPercent!.Value, SettledWithin);
        Assert.Equal(anew.RightArmSaturationPercent!.Value, reached.RightArmSaturationPercent!.Value, SettledWithin);
    }

    /// <summary>Drainage holes that come near the return take some of it up; the farther way is the lesser share.</summary>
    [Fact]
    public void Drainage_advanced_towards_the_return_port_recirculates_more_and_drawn_back_less()
    {
        PlanPlacing placing = Patient.Of(Of(ConfigurationKind.VvFemoralJugular));
        CannulaPlace planned = placing.Planned.Single(p => p.Role == CannulaRole.Drainage);
        double near = placing.Circulation([planned with { DepthCm = placing.DeepestCm(CannulaRole.Drainage) }]).RecirculationPercent!.Value;
        double far = placing.Circulation([planned with { DepthCm = planned.DepthCm - 8 }]).RecirculationPercent!.Value;
        Assert.True(near > far);
    }

    /// <summary>In this patient the return port of a dual-lumen cannula does not come down to the valve; drawing it back takes it farther away.</summary>
    [Fact]
    public void The_middle_patient_lies_within_the_interval_of_all_and_moves_the_same_way()
    {
        PlanPlacing placing = Patient.Of(Of(ConfigurationKind.VvDualLumenJugular));
        Estimate all = placing.Circulation([]).RecirculationPercent!;
        double middle = placing.CirculationOfMiddle([]).RecirculationPercent!.Value;
        Assert.InRange(middle, all.Low, all.High);
        CannulaPlace back = placing.Planned[0] with { DepthCm = placing.Planned[0].DepthCm - 4 };
        Assert.True(placing.CirculationOfMiddle([back]).RecirculationPercent!.Value > middle + 5);
        Assert.True(placing.Circulation([back]).RecirculationPercent!.Value > all.Value + 5);
    }

    private static CannulationPlan Of(ConfigurationKind kind) => Planned.Plans.First(p => p.Configuration == kind);

    private static void Same(Estimate expected, Estimate placed)
    {
        Assert.Equal(expected.Value, placed.Value, 9);
        Assert.Equal(expected.Low, placed.Low, 9);
        Assert.Equal(expected.High, placed.High, 9);
    }
}
