using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;

namespace Cavaxis.Planning.Tests.Rules;

/// <summary>What a goal means for a configuration stands in the rule book, like every other finding.</summary>
public class GoalRuleTests
{
    [Theory]
    [InlineData(SupportGoal.Circulation, ConfigurationKind.VvFemoralJugular, "goal-not-met", FindingGrade.Stop)]
    [InlineData(SupportGoal.Both, ConfigurationKind.VvFemoralFemoral, "goal-not-met", FindingGrade.Stop)]
    [InlineData(SupportGoal.Arrest, ConfigurationKind.VvDualLumenJugular, "goal-not-met", FindingGrade.Stop)]
    [InlineData(SupportGoal.Arrest, ConfigurationKind.VaAxillaryGraft, "surgery-in-arrest", FindingGrade.Stop)]
    [InlineData(SupportGoal.GasExchange, ConfigurationKind.VavFemoralJugular, "more-than-goal", FindingGrade.Warning)]
    public void A_goal_speaks_against_the_configurations_that_do_not_serve_it(
        SupportGoal goal, ConfigurationKind configuration, string id, FindingGrade grade)
    {
        PlanningResult result = Cases.Plan(Cases.For(goal));
        CannulationPlan plan = result.Plans.First(plan => plan.Configuration == configuration);
        Assert.Equal(grade, Assert.Single(plan.Findings, finding => finding.Id == id).Grade);
    }

    [Fact]
    public void Without_a_goal_no_configuration_is_spoken_against_for_its_goal() => Assert.DoesNotContain(
        Cases.Plan(Cases.Bare).Plans.SelectMany(plan => plan.Findings),
        finding => finding.Id is "goal-not-met" or "more-than-goal" or "surgery-in-arrest");

    [Fact]
    public void A_book_without_the_goal_rules_lists_them_as_loosened()
    {
        RuleBook own = RuleBookReader.BuiltIn;
        RuleBook without = own with { Findings = [.. own.Findings.Where(finding => finding.Id != "surgery-in-arrest")] };
        Assert.Contains(RuleBookComparison.Loosened(without), sentence => sentence.Contains("surgery-in-arrest", StringComparison.Ordinal));
    }

    [Fact]
    public void A_book_that_loosens_the_usual_pressure_beyond_the_absolute_one_is_held_to_the_absolute_one()
    {
        RuleBook own = RuleBookReader.BuiltIn;
        RuleBook loose = own with
        {
            Limits = [.. own.Limits.Select(limit => limit.Name switch
            {
                LimitName.InletPressureMmHg => limit with { Value = -450 },
                LimitName.InletPressureAbsoluteMmHg => limit with { Value = -60 },
                _ => limit,
            })],
        };
        CaseFile wanting = Cases.For(SupportGoal.GasExchange) with { Support = new SupportSection { Goal = SupportGoal.GasExchange, FlowLPerMin = 7.5 } };
        PlanningResult result = Planner.Plan(wanting, DeviceCatalogue.BuiltIn, loose, new PlanningOptions { Anatomies = Cases.FewAnatomies });

        // Combinations are compared with tabulated pressures, plans are computed afresh: two mmHg between them.
        Assert.All(result.Plans, plan => Assert.True(plan.Circuit.InletPressureMmHg.Value >= -62, plan.Name));
    }
}
