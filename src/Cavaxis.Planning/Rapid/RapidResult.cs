using Cavaxis.Planning.Plans;

namespace Cavaxis.Planning.Rapid;

/// <summary>Everything that can be said within minutes. There is no verdict: whether to go ahead is decided by those at the bedside.</summary>
/// <param name="CavaxisRapid">Version of this format.</param>
/// <param name="Caution">The caution that stands on every result.</param>
/// <param name="CriteriaEdition">Edition of the criteria.</param>
/// <param name="CriteriaChanges">How the criteria differ from the built-in ones, with who and why.</param>
/// <param name="Situations">Situations that hold, in words; the leading one first.</param>
/// <param name="Clock">The clock.</param>
/// <param name="Plan">The plan; null where none is possible.</param>
/// <param name="NotPlanned">Configurations without a plan, with the reason.</param>
/// <param name="Findings">What to bear in mind in these situations.</param>
/// <param name="Questions">Questions and in how many sources they matter, decisive ones first.</param>
/// <param name="Criteria">Every criterion.</param>
/// <param name="Sources">Every source with its criteria counted.</param>
/// <param name="Cohorts">Published rows, side by side.</param>
/// <param name="Conflicts">How rows that are shown disagree.</param>
/// <param name="Missing">Everything unknown, what was used instead, and what it matters for.</param>
/// <param name="NotChecked">What was not checked.</param>
public sealed record RapidResult(
    int CavaxisRapid,
    string Caution,
    string CriteriaEdition,
    IReadOnlyList<string> CriteriaChanges,
    IReadOnlyList<string> Situations,
    RapidClockReading Clock,
    RapidPlan? Plan,
    IReadOnlyList<NotPlanned> NotPlanned,
    IReadOnlyList<RapidFinding> Findings,
    IReadOnlyList<QuestionReading> Questions,
    IReadOnlyList<CriterionReading> Criteria,
    IReadOnlyList<SourceReading> Sources,
    IReadOnlyList<CohortReading> Cohorts,
    IReadOnlyList<string> Conflicts,
    IReadOnlyList<MissingInput> Missing,
    IReadOnlyList<string> NotChecked)
{
    /// <summary>Version of the output format.</summary>
    public const int CurrentVersion = 1;
}
