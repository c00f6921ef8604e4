using System.Globalization;
using Cavaxis.Cli.Output;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rapid;
using Cavaxis.Quantities;
using Spectre.Console;

namespace Cavaxis.Cli.RapidVerbs;

/// <summary>The rapid result for a terminal: clock and plan first, then criteria and published rows, then everything unknown.</summary>
/// <param name="output">Where to.</param>
internal sealed class RapidText(CommandOutput output)
{
    private readonly RunningLists lists = new(output);

    /// <summary>Writes everything.</summary>
    /// <param name="result">The result.</param>
    public void Write(RapidResult result)
    {
        lists.Head(string.Join(", ", result.Situations), invented: false, result.Caution);
        Clock(result.Clock);
        Plan(result);
        lists.Sentences("To bear in mind here", result.Findings.Select(static f => $"{f.Says} → {f.Resolve} [{f.Source}]"));
        Questions(result.Questions);
        lists.Sentences("Speaks against (its source would not have taken the patient)", Told(result.Criteria, CriterionVoice.Against));
        lists.Sentences("Too early for", Told(result.Criteria, CriterionVoice.NotYet));
        Sources(result.Sources);
        Cohorts(result.Cohorts);
        lists.Sentences("Published rows that do not agree", result.Conflicts);
        lists.Sentences("Unknown, and what was used instead", result.Missing.Select(static m => $"{m.Field}: {m.UsedInstead}; matters for {m.Matters}"));
        lists.Sentences("Criteria changed from the built-in ones", result.CriteriaChanges);
        lists.Sentences("Not checked", result.NotChecked);
        output.Line($"Criteria {result.CriteriaEdition}. No verdict is given: those at the bedside decide.");
    }

    private void Clock(RapidClockReading clock)
    {
        output.Wrapped("CLOCK: ", $"no flow {clock.NoFlow}; compressions so far {clock.CompressionsSoFar}; low flow until support {clock.LowFlow}.");
        output.Line();
        lists.Sentences("Limits on low flow ahead", clock.NextLimits);
        lists.Sentences("Limits on low flow passed", clock.PassedLimits);
    }

    private void Plan(RapidResult result)
    {
        if (result.Plan is not { } plan)
        {
            output.Wrapped("PLAN: ", "none is possible with these devices and vessels.");
            output.Line();
            lists.Sentences("Not planned", result.NotPlanned.Select(static n => $"{JsonName.Of(n.Configuration.ToString())}: {n.Reason}"));
            return;
        }

        output.Wrapped("PLAN: ", string.Create(
            CultureInfo.InvariantCulture,
            $"{(plan.HasStop ? "carries a HARD STOP; " : string.Empty)}{plan.Name}; needs {Band(plan.NeededFlowLPerMin, "0.0")} L/min, carries {plan.CarriedFlowLPerMin:0.0}; every port in its zone in {100 * plan.ProbabilityAllPortsInZone:0} % of the anatomies."));
        Table table = CommandOutput.Titled("Cannulae (estimated; intervals hold every body the patient may have)", "cannula", "Fr", "vessel", "vessel mm", "share of vessel", "depth cm", "L/min");
        foreach (RapidCannula c in plan.Cannulae)
        {
            table.AddRow(
                PlainWords.Role(c.Role), Number(c.OuterDiameterFrench, "0.#"), $"{PlainWords.Vessel(c.Route, c.Side)}{(c.VesselSeen ? string.Empty : " (not seen)")}", Band(c.VesselDiameterMm, "0.0"),
                $"{Number(100 * c.CannulaToVessel.Value, "0")} %", c.DepthCm is { } depth ? Band(depth, "0.0") : "-", Number(c.FlowLPerMin, "0.0"));
        }

        output.Console.Write(table);
        lists.Sentences("What speaks against the plan, gravest first", plan.Findings.Select(static f => $"{JsonName.Of(f.Grade.ToString())}: {f.Says} → {f.Resolve}"));
        lists.Sentences("Other plans", plan.Alternatives);
        lists.Sentences("Not planned", result.NotPlanned.Select(static n => $"{JsonName.Of(n.Configuration.ToString())}: {n.Reason}"));
    }

    private void Questions(IReadOnlyList<QuestionReading> questions)
    {
        Table table = CommandOutput.Titled("Answers, and in how many published sources they matter", "question", "answer", "refuse", "not taken", "too early", "took such", "open");
        foreach (QuestionReading q in questions.Where(static q => q.Answer != "unknown" && q.OpenIn + q.RefusedBy + q.NotTakenBy + q.TooEarlyFor + q.TakenBy > 0))
        {
            table.AddRow(
                Markup.Escape($"{(q.Decisive ? "* " : string.Empty)}{q.Asks}"), Markup.Escape(q.Answer), $"{Count(q.RefusedBy)}{(q is { Decisive: true, AgainstFromMemoryOnly: true } ? " (memory)" : string.Empty)}", Count(q.NotTakenBy),
                Count(q.TooEarlyFor), Count(q.TakenBy), Count(q.OpenIn));
        }

        output.Console.Write(table);
        output.Wrapped(string.Empty, "* decisive: by this answer alone at least one source refuses or does not take the patient. Sources are counted once however many limits they state.");
        output.Line();
    }

    private void Sources(IReadOnlyList<SourceReading> sources)
    {
        Table table = CommandOutput.Titled("Sources (a count is no verdict)", "source", "met", "against", "no objection", "too early", "open");
        foreach (SourceReading s in sources)
        {
            table.AddRow(Markup.Escape(s.Citation), Count(s.For), Count(s.Against), Count(s.NoObjection), Count(s.NotYet), Count(s.Open));
        }

        output.Console.Write(table);
    }

    private void Cohorts(IReadOnlyList<CohortReading> cohorts)
    {
        output.Line("What published patients became, side by side. Rows overlap; they are never multiplied.");
        foreach (CohortReading c in cohorts)
        {
            string count = c is { Count: int n, Of: int of } ? string.Create(CultureInfo.InvariantCulture, $"{n} of {of}, ") : string.Empty;
            string interval = c is { LowPercent: double low, HighPercent: double high } ? string.Create(CultureInfo.InvariantCulture, $" ({low:0} to {high:0}; {c.Interval})") : $" (interval {c.Interval})";
            output.Wrapped("  - ", string.Create(
                CultureInfo.InvariantCulture,
                $"{(c.If.Length > 0 ? $"IF {c.If}: " : string.Empty)}{c.Profile}: {c.Outcome} {count}{c.SharePercent:0.0} %{interval}{(c.Small ? "; SMALL NUMBER, not fit for a comparison" : string.Empty)}{(c.Note.Length > 0 ? $"; {c.Note}" : string.Empty)} [{c.Source}]"));
        }

        output.Line();
    }

    private static IEnumerable<string> Told(IReadOnlyList<CriterionReading> criteria, CriterionVoice voice) =>
        criteria.Where(c => c.Voice == voice).Select(static c => $"{(c.Kind == SelectionKind.Include ? "asked for: " : string.Empty)}{c.Wording}; {c.Strength}{(c.Note.Length > 0 ? $"; {c.Note}" : string.Empty)} [{c.Source}]");

    private static string Count(int count) => count == 0 ? "-" : count.ToString(CultureInfo.InvariantCulture);

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private static string Band(Estimate e, string format) => $"{Number(e.Value, format)} ({Number(e.Low, format)} to {Number(e.High, format)})";
}
