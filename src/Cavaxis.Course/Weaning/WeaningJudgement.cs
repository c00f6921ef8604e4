namespace Cavaxis.Course.Weaning;

/// <summary>What a trial showed. It says what was met, what was not and what nobody looked at; it never says what to do.</summary>
/// <param name="Kind">Which trial.</param>
/// <param name="Tested">The step at the lowest support that the criteria speak of; null when support was never brought down to it.</param>
/// <param name="Entry">Entry criteria at the first step.</param>
/// <param name="Success">Criteria at the tested step.</param>
/// <param name="Stops">Stop criteria that were met, with the step.</param>
/// <param name="Deviations">Where the trial differs from the published protocol.</param>
/// <param name="Comparisons">Readings beside what the fitted model expected.</param>
/// <param name="Words">What it shows together.</param>
public sealed record WeaningJudgement(
    WeaningKind Kind,
    WeaningStep? Tested,
    IReadOnlyList<WeaningFinding> Entry,
    IReadOnlyList<WeaningFinding> Success,
    IReadOnlyList<WeaningFinding> Stops,
    IReadOnlyList<string> Deviations,
    IReadOnlyList<WeaningComparison> Comparisons,
    string Words);
