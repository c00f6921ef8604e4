using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Ranking;

namespace Cavaxis.Planning.Search;

/// <summary>The front of a ranking.</summary>
internal static class RankedFront
{
    /// <summary>The front among the plans without a stop, since a stopped plan is no choice; among all where every plan is stopped.</summary>
    /// <param name="ranked">Plans, those without a stop first.</param>
    /// <param name="weights">Weight of each criterion.</param>
    /// <returns>For each plan whether it is on the front.</returns>
    public static IReadOnlyList<bool> Of(IReadOnlyList<CannulationPlan> ranked, IReadOnlyList<double> weights)
    {
        int open = ranked.Count(static plan => !plan.HasStop);
        int considered = open == 0 ? ranked.Count : open;
        IReadOnlyList<bool> marks = ParetoFront.Mark(
            [.. ranked.Take(considered).Select(static plan => (IReadOnlyList<double>)[.. plan.Criteria.Select(static c => c.Points)])], weights);
        return [.. marks, .. Enumerable.Repeat(false, ranked.Count - considered)];
    }
}
