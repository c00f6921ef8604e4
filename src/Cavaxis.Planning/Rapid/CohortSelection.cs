using Cavaxis.Anatomy.Body;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rapid;

/// <summary>Chooses the published rows that speak of such a patient and gives each its interval.</summary>
internal static class CohortSelection
{
    // The same convention as in the outcomes of a programme (docs/models/outcomes.md).
    private const int FewPatients = 20;
    private const int FewWithOrWithout = 5;

    /// <summary>The rows: those that apply first, then those that would if an unknown answer were so.</summary>
    /// <param name="criteria">All rows.</param>
    /// <param name="situations">Situations that hold.</param>
    /// <param name="sheet">The answers.</param>
    /// <param name="ageYears">Age.</param>
    /// <returns>The rows, in the order of the file within each.</returns>
    public static IReadOnlyList<CohortReading> Of(RapidCriteria criteria, IReadOnlyList<SituationRule> situations, AnswerSheet sheet, double ageYears)
    {
        CohortAges other = ageYears < BodyHabitus.AdultAgeYears ? CohortAges.Adults : CohortAges.Children;
        return [.. criteria.Cohorts
            .Where(cohort => cohort.Ages != other && cohort.Situations.Any(s => situations.Any(rule => rule.Situation == s)))
            .Select(cohort => Reading(criteria, cohort, sheet))
            .Where(static reading => reading.Applies != CriterionState.NotMet)
            .OrderBy(static reading => reading.Applies == CriterionState.Met ? 0 : 1)];
    }

    /// <summary>Whether a count is too small for a comparison.</summary>
    /// <param name="count">With the outcome.</param>
    /// <param name="of">Of how many.</param>
    /// <returns>True for fewer than 20 patients, or fewer than 5 with or without the outcome.</returns>
    public static bool IsSmall(int count, int of) => of < FewPatients || count < FewWithOrWithout || of - count < FewWithOrWithout;

    private static CohortReading Reading(RapidCriteria criteria, PublishedCohort cohort, AnswerSheet sheet)
    {
        CriterionState applies = cohort.When is { } when ? AnswerTest.Of(when, sheet.Of(when.Question)) : CriterionState.Met;
        string condition = applies == CriterionState.Unknown ? InWords(criteria, cohort.When!) : string.Empty;
        Source source = criteria.SourceOf(cohort.Source, cohort.Certainty);
        if (cohort is { Count: int count, Of: int of })
        {
            (double low, double high) = WilsonShare.Limits(count, of, WilsonShare.NormalQuantile975);
            return new CohortReading(
                cohort.Id, cohort.Profile, cohort.Outcome, applies, condition, count, of, 100.0 * count / of, 100 * low, 100 * high, "Wilson 95 %, from the printed counts", IsSmall(count, of), source,
                cohort.Note ?? string.Empty);
        }

        return new CohortReading(
            cohort.Id, cohort.Profile, cohort.Outcome, applies, condition, null, cohort.Of, cohort.SharePercent!.Value, cohort.PrintedLowPercent, cohort.PrintedHighPercent,
            cohort.PrintedLowPercent is null ? "none: no counts printed in what was read" : "95 %, printed by the source", cohort.Of < FewPatients, source, cohort.Note ?? string.Empty);
    }

    private static string InWords(RapidCriteria criteria, AnswerCondition when)
    {
        RapidQuestion question = criteria.Questions.First(q => q.Name == when.Question);
        return when.Comparison switch
        {
            AnswerComparison.Is => $"{question.Asks} yes",
            AnswerComparison.IsNot => $"{question.Asks} no",
            AnswerComparison.OneOf => $"{question.Asks}: {string.Join(" or ", when.Words.Select(static w => Plans.PlainWords.FromName(char.ToUpperInvariant(w[0]) + w[1..])))}",
            AnswerComparison.Between => FormattableString.Invariant($"{question.Asks} {when.Value:0.#} to {when.Upper:0.#} {question.Unit}"),
            AnswerComparison.LessThan => FormattableString.Invariant($"{question.Asks} below {when.Value:0.#} {question.Unit}"),
            AnswerComparison.AtMost => FormattableString.Invariant($"{question.Asks} at most {when.Value:0.#} {question.Unit}"),
            AnswerComparison.AtLeast => FormattableString.Invariant($"{question.Asks} at least {when.Value:0.#} {question.Unit}"),
            _ => FormattableString.Invariant($"{question.Asks} above {when.Value:0.#} {question.Unit}"),
        };
    }
}
