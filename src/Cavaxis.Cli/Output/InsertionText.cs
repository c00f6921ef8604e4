using System.Globalization;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities;
using Spectre.Console;

namespace Cavaxis.Cli.Output;

/// <summary>An insertion study for a terminal.</summary>
/// <param name="output">Where to.</param>
internal sealed class InsertionText(CommandOutput output)
{
    /// <summary>Writes everything.</summary>
    /// <param name="result">The study.</param>
    public void Write(InsertionResult result)
    {
        RunningLists lists = new(output);
        lists.Head(result.CaseTitle, result.Invented, result.Caution);
        output.Wrapped(string.Empty, string.Create(
            CultureInfo.InvariantCulture,
            $"Plan {result.PlanRank}, {result.PlanName}; {PlainWords.FromName(result.Wire.ToString())} wire; {result.Anatomies} sampled anatomies, seed {result.Seed}. Results compare options for this patient; no force has a limit."));
        output.Line();
        foreach (CannulaInsertion cannula in result.Cannulae)
        {
            Write(cannula);
            lists.Sentences("Done otherwise (same anatomies, same unknowns; best first)", cannula.Advice.Select(Told));
            lists.Sentences("Could not be followed to the end", cannula.NotFollowed.Select(static n => string.Create(CultureInfo.InvariantCulture, $"{n.Value} anatomies: {n.Key}")));
        }

        lists.Sentences("Not studied", result.NotStudied);
        lists.Sentences("Predicted pitfalls, at their steps", result.Steps.Where(static s => s.PredictedPitfall is not null).Select(static s => string.Create(CultureInfo.InvariantCulture, $"Step {s.Number}. {s.Action} {s.PredictedPitfall}")));
        lists.Sentences("Assumed, because nobody has published it", result.Assumed);
        lists.Sentences("Not checked", result.NotChecked);
    }

    private void Write(CannulaInsertion cannula)
    {
        output.Line(string.Create(
            CultureInfo.InvariantCulture,
            $"{Capital(PlainWords.Role(cannula.Role))} ({cannula.DeviceId}) through the {PlainWords.Vessel(cannula.Route, cannula.Side)}, wire {cannula.WireCm:F0} cm, cannula {cannula.DepthCm:F1} cm"));
        output.Wrapped("  ", $"Every part as it should: {Percent(cannula.Right)} of the anatomies (calculated; the interval is that of counting alone).");
        Table table = CommandOutput.Titled("Where the wire ends (calculated)", string.Empty, "before the cannula", "after it");
        foreach (WireEndShare end in cannula.WireEnds)
        {
            table.AddRow(Markup.Escape(PlainWords.FromName(end.End.ToString())), Percent(end.Share), Percent(end.AfterCannula));
        }

        output.Console.Write(table);
        Table first = CommandOutput.Titled("What goes wrong first (calculated)", string.Empty, "share");
        foreach (PhaseShare phase in cannula.FirstWrong)
        {
            first.AddRow(Markup.Escape(phase.Phase == InsertionPhase.None ? "nothing" : PlainWords.FromName(phase.Phase.ToString())), Percent(phase.Share));
        }

        output.Console.Write(first);
        output.Wrapped("  ", $"Tip of the cannula at the end: {string.Join(", ", cannula.CannulaTips.Select(static t => string.Create(CultureInfo.InvariantCulture, $"{PlainWords.FromName(t.Key.ToString())} {100 * t.Value:F0} %")))}.");
        output.Wrapped("  ", $"Largest force of the wire's tip on a wall {Band(cannula.WireTipForceN, "F2")} N, most often at: {PlainWords.FromName(cannula.WireTipForceAt.ToString())}; of the cannula {Band(cannula.CannulaForceN, "F1")} N; wire drawn back by {Band(cannula.WireLostMm, "F0")} mm while the cannula advances.");
        output.Line();
    }

    private static string Told(InsertionAdvice advice) => string.Create(
        CultureInfo.InvariantCulture,
        $"{advice.Words}: {100 * advice.RightBefore:F0} → {100 * advice.RightAfter:F0} % go as they should ({100 * advice.Gain.Value:+0;−0;0} points, {100 * advice.Gain.Low:+0;−0;0} to {100 * advice.Gain.High:+0;−0;0}; {advice.Anatomies} anatomies)");

    private static string Percent(Estimate share) => string.Create(CultureInfo.InvariantCulture, $"{100 * share.Value:F0} % ({100 * share.Low:F0} to {100 * share.High:F0})");

    private static string Band(Estimate e, string format) =>
        $"{e.Value.ToString(format, CultureInfo.InvariantCulture)} ({e.Low.ToString(format, CultureInfo.InvariantCulture)} to {e.High.ToString(format, CultureInfo.InvariantCulture)})";

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
