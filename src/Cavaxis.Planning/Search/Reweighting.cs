using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Ranking;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Search;

/// <summary>
/// The plans of a result ranked by other weights, at once. The devices of each plan stay those that the search found with the weights it
/// was given; a whole planning with other weights may find others.
/// </summary>
public static class Reweighting
{
    /// <summary>Ranks anew.</summary>
    /// <param name="plans">Plans of one result.</param>
    /// <param name="rules">The rule book that they were made with.</param>
    /// <param name="goal">Goal of the case.</param>
    /// <param name="weights">Weights that replace those of the rule book.</param>
    /// <returns>The plans best first, each still with the rank that it has in its result; scores, weights and the marks of the front are new.</returns>
    /// <exception cref="InputFaultException">A weight is out of range, or all are zero.</exception>
    public static IReadOnlyList<CannulationPlan> Of(
        IReadOnlyList<CannulationPlan> plans, RuleBook rules, SupportGoal? goal, IReadOnlyDictionary<CriterionName, double> weights)
    {
        ArgumentNullException.ThrowIfNull(plans);
        ArgumentNullException.ThrowIfNull(rules);
        CriteriaScale scale = new(rules.Criteria, goal, weights);
        CannulationPlan[] ranked = [.. plans
            .Select(plan => plan with
            {
                Criteria = [.. plan.Criteria.Select((c, i) => c with { Weight = scale.Weights[i] })],
                Score = scale.Score([.. plan.Criteria.Select(static c => c.Value)]),
            })
            .OrderBy(static plan => plan.HasStop ? 1 : 0)
            .ThenByDescending(static plan => plan.Score)
            .ThenBy(static plan => plan.Rank)];
        IReadOnlyList<bool> front = RankedFront.Of(ranked, scale.Weights);
        return [.. ranked.Select((plan, i) => plan with { OnParetoFront = front[i] })];
    }
}
