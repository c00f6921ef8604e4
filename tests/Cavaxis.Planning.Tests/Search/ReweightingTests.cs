using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Tests.Search;

public class ReweightingTests
{
    private static readonly RuleBook Rules = RuleBookReader.BuiltIn;
    private static readonly PlanningResult Planned = Cases.Plan(Cases.For(SupportGoal.Both));

    [Fact]
    public void With_the_weights_of_the_rule_book_the_ranking_is_that_of_planning()
    {
        IReadOnlyList<CannulationPlan> again = Again([]);
        Assert.Equal(Planned.Plans.Select(static p => p.Rank), again.Select(static p => p.Rank));
        Assert.All(Planned.Plans.Zip(again), static pair =>
        {
            Assert.Equal(pair.First.Score, pair.Second.Score, 12);
            Assert.Equal(pair.First.OnParetoFront, pair.Second.OnParetoFront);
        });
    }

    [Fact]
    public void With_one_weight_alone_the_score_is_the_points_of_that_criterion()
    {
        Dictionary<CriterionName, double> only = Rules.Criteria.ToDictionary(static c => c.Name, static c => c.Name == CriterionName.Punctures ? 3.0 : 0);
        IReadOnlyList<CannulationPlan> ranked = Again(only);
        Assert.All(ranked, static p => Assert.Equal(p.Criteria.Single(static c => c.Name == CriterionName.Punctures).Points, p.Score, 12));
        CannulationPlan[] open = [.. ranked.Where(static p => !p.HasStop)];
        Assert.Equal(open.OrderByDescending(static p => p.Score).Select(static p => p.Score), open.Select(static p => p.Score));
        Assert.NotEqual(Planned.Plans.Select(static p => p.Rank), ranked.Select(static p => p.Rank));
    }

    [Fact]
    public void Plans_with_a_stop_stay_behind_whatever_the_weights() => Assert.True(
        Again(new() { [CriterionName.Fit] = 0 }).SkipWhile(static p => !p.HasStop).All(static p => p.HasStop));

    [Fact]
    public void All_weights_at_zero_are_refused() => Assert.Throws<InputFaultException>(
        () => Again(Rules.Criteria.ToDictionary(static c => c.Name, static _ => 0.0)));

    private static IReadOnlyList<CannulationPlan> Again(Dictionary<CriterionName, double> weights) =>
        Reweighting.Of(Planned.Plans, Rules, SupportGoal.Both, weights);
}
