using System.Globalization;
using Cavaxis.Planning.Rapid;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>
/// Reference rows of rapid mode: published limits on both sides, and shares and intervals of published counts against what the sources print.
/// Only what was read in the source itself stands here. Document: <c>docs/models/rapid.md</c>.
/// </summary>
public sealed class PlanningRapidChecks : IReferenceChecks
{
    // Criterion, what the source says, the last number on the one side and the first on the other, and whether the criterion holds there.
    private static readonly (string Id, string Says, double Inside, double Outside)[] Limits =
    [
        ("c001", "adults aged 18-75 years, lower end", 18, 17.9), ("c001", "adults aged 18-75 years, upper end", 75, 75.1),
        ("c018", "age 18 or more and 65 years or less, lower end", 18, 17.9), ("c018", "age 18 or more and 65 years or less, upper end", 65, 65.1),
        ("c032", "age 18-70 years, lower end", 18, 17.9), ("c032", "age 18-70 years, upper end", 70, 70.1),
        ("c003", "no return of circulation after three shocks", 3, 2), ("c004", "estimated transfer time shorter than 30 min", 29.9, 30),
        ("c006", "end-tidal CO2 < 10 mmHg", 9.9, 10), ("c007", "PaO2 < 50 mmHg", 49.9, 50), ("c008", "saturation < 85 %", 84.9, 85), ("c009", "lactate > 18 mmol/L", 18.1, 18),
        ("c020", "minimum of 5 min of life support", 5, 4.9), ("c021", "not later than 60 min", 60, 60.1), ("c036", "fail to achieve circulation within 15 min", 15, 14.9),
        ("c037", "expected initiation > 60 min", 60.1, 60), ("c051", "presumed time less than 90 min", 89.9, 90), ("c056", "considered after 10 min or more", 10, 9.9),
        ("c092", "> 65 years", 65.1, 65), ("c093", "> 70 years", 70.1, 70), ("c094", "> 74 years", 74.1, 74), ("c095", "> 75 years", 75.1, 75), ("c096", "> 80 years", 80.1, 80),
        ("c097", "< 10 min is too early", 10, 9.9), ("c098", "< 15 min is too early", 15, 14.9), ("c099", "< 20 min is too early", 20, 19.9), ("c100", "< 30 min is too early", 30, 29.9),
        ("c114", "estimate 10 % or more", 10, 9.9), ("c136", "injurious ventilation > 7 days", 7.1, 7), ("c137", "SAPS II 60 or more", 60, 59), ("c138", "SOFA > 12", 13, 12),
    ];

    // Row, share as the source prints it in percent, digits printed.
    private static readonly (string Id, double PrintedPercent, double Half)[] Shares =
    [
        ("s010", 1.2, 0.05), ("s011", 23.9, 0.05), ("s012", 40, 0.5), ("s013", 5, 0.5), ("s026", 25.4, 0.05), ("s032", 43.8, 0.05), ("s033", 21.9, 0.05),
        ("s034", 66.7, 0.05), ("s035", 45.8, 0.05), ("s036", 77, 0.5), ("s037", 37, 0.5), ("s050", 10.0, 0.05), ("s059", 52.6, 0.05), ("s060", 10.9, 0.05), ("s061", 15, 0.5), ("s062", 8.9, 0.05),
        ("s063", 1.7, 0.05), ("s137", 75.4, 0.05), ("s138", 64.7, 0.05), ("s145", 70, 0.5), ("s148", 40, 0.5), ("s149", 27, 0.5), ("s150", 27, 0.5),
    ];

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows() => [.. Limits.SelectMany(Sides), .. Shares.Select(Share), .. Interval()];

    private static IEnumerable<ValidationRow> Sides((string Id, string Says, double Inside, double Outside) limit)
    {
        SelectionCriterion criterion = RapidCriteriaReader.BuiltIn.Criteria.Single(c => c.Id == limit.Id);
        Source source = RapidCriteriaReader.BuiltIn.SourceOf(criterion.Source, criterion.Certainty);
        foreach ((double at, double holds) in new[] { (limit.Inside, 1.0), (limit.Outside, 0.0) })
        {
            CriterionState state = AnswerTest.Of(criterion.When!, RapidAnswer.Of(criterion.When!.Question, NumberRange.Exactly(at)));
            yield return new ValidationRow(
                "Planning", string.Create(CultureInfo.InvariantCulture, $"Rapid criterion {limit.Id} (\"{limit.Says}\") at {at}: 1 holds, 0 does not"), source, holds, state == CriterionState.Met ? 1 : state == CriterionState.NotMet ? 0 : 0.5, "1",
                Tolerance.Absolute, 0, "0.5 would be unknown.");
        }
    }

    private static ValidationRow Share((string Id, double PrintedPercent, double Half) printed)
    {
        PublishedCohort row = RapidCriteriaReader.BuiltIn.Cohorts.Single(c => c.Id == printed.Id);
        return new ValidationRow(
            "Planning", string.Create(CultureInfo.InvariantCulture, $"Rapid row {row.Id}: share of {row.Count} of {row.Of} ({row.Profile})"), RapidCriteriaReader.BuiltIn.SourceOf(row.Source, row.Certainty), printed.PrintedPercent,
            100.0 * row.Count!.Value / row.Of!.Value, "%", Tolerance.Absolute, printed.Half * 1.001, "Printed digits.");
    }

    private static IEnumerable<ValidationRow> Interval()
    {
        // The only row whose source prints its own interval with its counts: 33 to 51 %.
        PublishedCohort row = RapidCriteriaReader.BuiltIn.Cohorts.Single(static c => c.Id == "s075");
        Source source = RapidCriteriaReader.BuiltIn.SourceOf(row.Source, row.Certainty);
        (double low, double high) = WilsonShare.Limits(row.Count!.Value, row.Of!.Value, WilsonShare.NormalQuantile975);
        yield return new ValidationRow("Planning", "Rapid row s075: Wilson's 95 % interval of 51 of 122, lower end", source, 33, 100 * low, "%", Tolerance.Absolute, 0.501, "Printed in whole percent; the source does not say which interval it used.");
        yield return new ValidationRow("Planning", "Rapid row s075: Wilson's 95 % interval of 51 of 122, upper end", source, 51, 100 * high, "%", Tolerance.Absolute, 0.501, "Printed in whole percent; the source does not say which interval it used.");
    }
}
