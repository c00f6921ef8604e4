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

    [Fact]
    public void Drainage_advanced_to_the_return_port_recirculates_more()
    {
        PlanPlacing placing = Patient.Of(Of(ConfigurationKind.VvFemoralJugular));
        CannulaPlace planned = placing.Planned.Single(p => p.Role == CannulaRole.Drainage);
        double near = placing.Circulation([planned with { DepthCm = Math.Min(planned.DepthCm + 15, placing.DeepestCm(CannulaRole.Drainage)) }]).RecirculationPercent!.Value;
        Assert.True(near > placing.Circulation([]).RecirculationPercent!.Value + 2);
    }

    [Fact]
    public void The_middle_patient_lies_within_the_interval_of_all_and_moves_the_same_way()
    {
        PlanPlacing placing = Patient.Of(Of(ConfigurationKind.VvDualLumenJugular));
        Estimate all = placing.Circulation([]).RecirculationPercent!;
        double middle = placing.CirculationOfMiddle([]).RecirculationPercent!.Value;
        Assert.InRange(middle, all.Low, all.High);
        CannulaPlace turned = placing.Planned[0] with { TurnDeg = 60 };
        Assert.True(placing.CirculationOfMiddle([turned]).RecirculationPercent!.Value > middle);
        Assert.True(placing.Circulation([turned]).RecirculationPercent!.Value > all.Value);
    }

    private static CannulationPlan Of(ConfigurationKind kind) => Planned.Plans.First(p => p.Configuration == kind);

    private static void Same(Estimate expected, Estimate placed)
    {
        Assert.Equal(expected.Value, placed.Value, 9);
        Assert.Equal(expected.Low, placed.Low, 9);
        Assert.Equal(expected.High, placed.High, 9);
    }
}
