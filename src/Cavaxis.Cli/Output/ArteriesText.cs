using System.Globalization;
using Cavaxis.Arteries.Findings;
using Cavaxis.Planning.Arterial;
using Cavaxis.Quantities;
using Cavaxis.Reports.ArterialReports;
using Spectre.Console;

namespace Cavaxis.Cli.Output;

/// <summary>The arterial tree of a case for a terminal: where the two flows meet, who gets which blood, the legs, then what it stands on.</summary>
/// <param name="output">Where to.</param>
internal sealed class ArteriesText(CommandOutput output)
{
    /// <summary>Writes everything.</summary>
    /// <param name="answer">The answer.</param>
    public void Write(ArteriesAnswer answer)
    {
        RunningLists lists = new(output);
        lists.Head(answer.CaseTitle, answer.Invented, answer.Caution);
        output.Wrapped("Computed: ", answer.Basis);
        if (answer.Result is not ArterialSupportResult result)
        {
            output.Wrapped("NOT FOUND: ", answer.Reason);
            output.Line();
            return;
        }

        output.Wrapped("Support: ", result.PumpFlowLPerMin > 0 ? string.Create(CultureInfo.InvariantCulture, $"pump {result.PumpFlowLPerMin:F1} L/min into the {result.ReturnInWords}") : "no pump flow");
        output.Wrapped("ANSWER: ", ArterialText.Mixing(result.Mixing));
        if (!result.Settling.BloodSettled)
        {
            output.Wrapped("NOT SETTLED: ", ArterialText.NotSettled);
        }

        output.Wrapped(string.Empty, result.Sampling.InWords);
        output.Wrapped(string.Empty, ArterialText.Heart(result.Heart));
        output.Line();
        Organs(result);
        lists.Sentences("Legs (calculated)", result.Limbs.Select(static l => $"{ArterialText.Supply(l.Supply)}: {l.InWords}"));
        Sweep(answer.Sweep);
        lists.Sentences("Assumed, because the case does not say", answer.Assumed);
        lists.Sentences("Varied for the intervals", result.Varied);
        lists.Sentences("Not part of the model", result.NotModelled);
        lists.Sentences("Where the numbers of the tree come from", result.Sources.Select(static s => s.ToString()));
        SettlingRecord settling = result.Settling;
        output.Wrapped("Computation: ", string.Create(
            CultureInfo.InvariantCulture,
            $"{settling.Cells} cells, {settling.StepsPerBeat} steps a beat; {settling.Beats} beats until the flow repeated itself to {settling.FlowChange:E1}, {settling.TransportBeats} until the oxygen did; oxygen out less in {settling.OxygenImbalance:E1} of what enters."));
    }

    private void Organs(ArterialSupportResult result)
    {
        Table table = CommandOutput.Titled(
            "Who gets which blood (calculated; in parentheses lowest and highest of the beat, in brackets the interval with what is uncertain)",
            string.Empty, "flow L/min", "of rest %", "membrane %", "saturation %", "PO2 mmHg", "O2 mL/min");
        for (int i = 1; i < table.Columns.Count; i++)
        {
            table.Columns[i].RightAligned();
        }

        foreach (OrganReading organ in result.Organs)
        {
            Estimate interval = organ.MeanSaturationPercent;
            table.AddRow(
                Markup.Escape(organ.Title),
                organ.FlowLPerMin.ToString("F2", CultureInfo.InvariantCulture),
                ArterialText.Percent(organ.RestShareOfFlow),
                ArterialText.Percent(organ.MembraneShare.Mean),
                Markup.Escape(string.Create(CultureInfo.InvariantCulture, $"{ArterialText.Short(organ.SaturationPercent)} [{interval.Low:F0} to {interval.High:F0}]")),
                Markup.Escape(ArterialText.Short(organ.Po2MmHg)),
                organ.DeliveryMlPerMin.ToString("F0", CultureInfo.InvariantCulture));
        }

        output.Console.Write(table);
    }

    private void Sweep(IReadOnlyCollection<ArterialSweepPoint> points)
    {
        if (points.Count == 0)
        {
            return;
        }

        Table table = CommandOutput.Titled(
            "Over pump flow and strength of the heart (calculated)",
            "pump L/min", "strength", "heart L/min", "mean mmHg", "half at cm", "heart %", "brain R %", "brain L %", "hand R %", "hand L %");
        foreach (ArterialSweepPoint p in points)
        {
            string[] numbers =
            [
                N(p.PumpFlowLPerMin, "F1"), "×" + N(p.ContractilityFactor, "F2"), N(p.NativeOutputLPerMin, "F1"), N(p.MeanPressureMmHg, "F0"), ArterialText.Short(p.HalfCm),
                N(p.HeartPercent, "F0"), N(p.BrainRightPercent, "F0"), N(p.BrainLeftPercent, "F0"), N(p.HandRightPercent, "F0"), N(p.HandLeftPercent, "F0"),
            ];
            table.AddRow([.. numbers.Select(Markup.Escape)]);
        }

        output.Console.Write(table);
        output.Line();
    }

    private static string N(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
