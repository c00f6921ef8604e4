using System.Globalization;
using System.Text;
using Cavaxis.Course.Criteria;
using Cavaxis.Quantities;

namespace Cavaxis.Course.Weaning;

/// <summary>Holds a weaning trial against criteria.</summary>
public static class WeaningJudge
{
    /// <summary>Judges a trial by the published criteria.</summary>
    /// <param name="trial">The trial.</param>
    /// <returns>What it showed.</returns>
    public static WeaningJudgement Judge(WeaningTrial trial) => Judge(trial, WeaningCriteria.Published);

    /// <summary>Judges a trial by given criteria, such as those that a programme has tightened.</summary>
    /// <param name="trial">The trial.</param>
    /// <param name="criteria">Criteria; those of the other trial are left out.</param>
    /// <returns>What it showed.</returns>
    public static WeaningJudgement Judge(WeaningTrial trial, IReadOnlyList<WeaningCriterion> criteria)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(criteria);
        WeaningProtocol protocol = WeaningProtocol.Of(trial.Kind);
        WeaningStep? tested = trial.Steps.LastOrDefault(step => IsTested(step, protocol));
        WeaningCriterion[] own = [.. criteria.Where(c => c.Kind == trial.Kind)];
        WeaningFinding[] entry = [.. own.Where(static c => c.Role == WeaningRole.Entry).Select(c => Find(c, trial.Steps[0]))];
        WeaningFinding[] success = [.. own.Where(static c => c.Role == WeaningRole.Success).Select(c => Find(c, tested))];
        WeaningFinding[] stops =
        [
            .. own.Where(static c => c.Role == WeaningRole.Stop)
                .SelectMany(c => trial.Steps.Select(step => Find(c, step)))
                .Where(static f => f.Judgement.Verdict == CriterionVerdict.Met).OrderBy(static f => f.StartMinute),
        ];
        string[] deviations = [.. Deviations(trial, protocol, tested)];
        return new WeaningJudgement(
            trial.Kind, tested, entry, success, stops, deviations, [.. trial.Steps.SelectMany(Compare)], Words(trial.Kind, tested, entry, success, stops, deviations));
    }

    private static bool IsTested(WeaningStep step, WeaningProtocol protocol) => protocol.HighestTestedFlowLPerMin is double highest
        ? step.FlowLPerMin <= highest
        : step.SweepLPerMin == 0;

    private static WeaningFinding Find(WeaningCriterion criterion, WeaningStep? step) =>
        new(criterion, step?.StartMinute, criterion.Criterion.Judge(step?.Of(criterion.Quantity)));

    private static IEnumerable<string> Deviations(WeaningTrial trial, WeaningProtocol protocol, WeaningStep? tested)
    {
        if (tested is null)
        {
            yield return protocol.HighestTestedFlowLPerMin is double highest
                ? string.Create(CultureInfo.InvariantCulture, $"The flow was not brought down to {highest:0.#} L/min ({Lowest(trial)}); the criteria speak of that flow.")
                : "The sweep was at no step noted as off; the criteria speak of a sweep that is off.";
        }
        else if (tested.DurationMin < protocol.ShortestTestMin)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"The lowest support was held for {tested.DurationMin:0.#} min; the source holds it for at least {protocol.ShortestTestMin:0} min.");
        }

        if (trial.Steps.FirstOrDefault(static s => s.FlowLPerMin < 0) is WeaningStep backwards)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"From minute {backwards.StartMinute:0.#} the flow ran backwards; the criteria were published for a low forward flow.");
        }

        foreach (WeaningStep low in trial.Steps.Where(s => s.FlowLPerMin >= 0 && s.FlowLPerMin < protocol.LowestFlowLPerMin))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"From minute {low.StartMinute:0.#} the flow was {low.FlowLPerMin:0.0#} L/min; the source keeps {protocol.LowestFlowLPerMin:0.#} L/min, because less lets the circuit clot.");
        }

        if (trial.Steps.Any(static s => s.FlowLPerMin is null))
        {
            yield return "The pump flow was not noted at every step.";
        }

        if (trial.Kind == WeaningKind.VenoVenousSweep && trial.Steps.Any(static s => s.SweepLPerMin is null))
        {
            yield return "The sweep was not noted at every step.";
        }
    }

    private static string Lowest(WeaningTrial trial) => trial.Steps.Min(static s => s.FlowLPerMin) is double lowest
        ? string.Create(CultureInfo.InvariantCulture, $"lowest {lowest:0.0#} L/min")
        : "no flow was noted";

    private static IEnumerable<WeaningComparison> Compare(WeaningStep step) => step.Expected.Select(expected =>
    {
        Estimate? read = step.Of(expected.Quantity);
        if (read is null)
        {
            return new WeaningComparison(step.StartMinute, expected.Quantity, null, expected.Value, null, $"{expected.Quantity}: the fitted model expected a reading that was not taken.");
        }

        double error = double.Hypot(read.Sd, expected.Value.Sd);
        double? apart = error > 0 ? (read.Value - expected.Value.Value) / error : null;
        string verdict = apart is null ? "without any error to compare by" : Math.Abs(apart.Value) <= Estimate.NormalQuantile95 ? "as expected within the error" : apart > 0 ? "more than expected" : "less than expected";
        return new WeaningComparison(
            step.StartMinute, expected.Quantity, read, expected.Value, apart,
            string.Create(CultureInfo.InvariantCulture, $"{expected.Quantity}: read {read.Value:0.##}, the fitted model expected {expected.Value.Value:0.##} ({expected.Value.Low:0.##} to {expected.Value.High:0.##}); {verdict}."));
    });

    private static string Words(
        WeaningKind kind, WeaningStep? tested, WeaningFinding[] entry, WeaningFinding[] success, WeaningFinding[] stops, string[] deviations)
    {
        StringBuilder words = new();
        string level = kind == WeaningKind.VenoArterialFlow ? "at the lowest flow" : "with the sweep off";
        if (tested is null)
        {
            words.Append(CultureInfo.InvariantCulture, $"Nothing was tested {level}. ");
        }
        else
        {
            int close = success.Count(static f => f.Judgement is { Verdict: CriterionVerdict.Met, WithinError: true });
            words.Append(CultureInfo.InvariantCulture, $"{Count(success, CriterionVerdict.Met)} of {success.Length} published criteria were met {level}");
            words.Append(close > 0 ? string.Create(CultureInfo.InvariantCulture, $" ({close} of them within the error of the reading)") : string.Empty);
            words.Append(Named("; not met: ", success, CriterionVerdict.NotMet));
            words.Append(Named("; not measured: ", success, CriterionVerdict.NotMeasured)).Append(". ");
        }

        words.Append(CultureInfo.InvariantCulture, $"Of {entry.Length} entry criteria {Count(entry, CriterionVerdict.Met)} were met");
        words.Append(Named("; not met: ", entry, CriterionVerdict.NotMet)).Append(Named("; not measured: ", entry, CriterionVerdict.NotMeasured)).Append(". ");
        foreach (WeaningFinding stop in stops)
        {
            words.Append(CultureInfo.InvariantCulture, $"From minute {stop.StartMinute:0.#} {stop.Criterion.Criterion.Words} was {stop.Criterion.Criterion.Condition}, where the source ends a trial. ");
        }

        words.AppendJoin(' ', deviations).Append(deviations.Length > 0 ? " " : string.Empty);
        return words.Append("The decision is with the clinicians at the bedside.").ToString();
    }

    private static int Count(WeaningFinding[] findings, CriterionVerdict verdict) => findings.Count(f => f.Judgement.Verdict == verdict);

    private static string Named(string before, WeaningFinding[] findings, CriterionVerdict verdict)
    {
        string[] names = [.. findings.Where(f => f.Judgement.Verdict == verdict).Select(static f => f.Criterion.Criterion.Words)];
        return names.Length == 0 ? string.Empty : before + string.Join(", ", names);
    }
}
