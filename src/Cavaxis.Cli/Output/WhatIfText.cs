using System.Globalization;
using Cavaxis.Planning.Running;
using Cavaxis.Quantities;
using Spectre.Console;

namespace Cavaxis.Cli.Output;

/// <summary>What a change would do, for a terminal.</summary>
/// <param name="output">Where to.</param>
internal sealed class WhatIfText(CommandOutput output)
{
    private static readonly string[] Shown =
    [
        "meanArterialPressureMmHg", "pulsePressureMmHg", "centralVenousPressureMmHg", "wedgePressureMmHg", "nativeOutputLPerMin", "systemicFlowLPerMin",
        "systemicResistanceWoodUnits", "pulmonaryResistanceWoodUnits",
        "leftVentricularEjectionFractionPercent", "leftVentricularEndDiastolicVolumeMl", "aorticValveOpenPercent", "pumpFlowLPerMin", "inletPressureMmHg",
        "drainageLowestOpenness", "recirculationPercent", "effectiveFlowLPerMin", "preMembraneSaturationPercent", "rightArmSaturationPercent", "rightArmPco2MmHg",
        "lowerBodySaturationPercent", "venousSaturationPercent", "oxygenDeliveryMlPerMin", "deliveryOverConsumption",
    ];

    /// <summary>Writes everything.</summary>
    /// <param name="answer">The answer.</param>
    public void Write(WhatIfAnswer answer)
    {
        RunningLists lists = new(output);
        lists.Head(answer.CaseTitle, answer.Invented, answer.Caution);
        foreach (ChangeMade change in answer.Changes)
        {
            string unit = change.Unit == "1" ? string.Empty : " " + change.Unit;
            output.Wrapped("If ", string.Create(
                CultureInfo.InvariantCulture, $"{change.Name} is {change.Asked()} in every member (best fit: {change.From:G5} to {change.To:G5}{unit})"));
        }

        output.Line();
        if (!answer.Found)
        {
            output.Wrapped(answer.Refused == WhatIfRefusal.NotSettled ? "NOT SETTLED: " : "NO ANSWER: ", answer.Reason);
            output.Wrapped(string.Empty, "There are no numbers to show.");
            output.Line();
            lists.Patient(answer.Patient);
            return;
        }

        Table table = CommandOutput.Titled("Before and after (calculated; median and the middle nine tenths of the members)", string.Empty, "before", "after", "difference", "unit");
        foreach (WhatIfQuantity q in answer.Quantities.Where(q => Shown.Contains(q.Name)))
        {
            table.AddRow(Markup.Escape(q.Words), Band(q.Before, q.Unit), Band(q.After, q.Unit), Band(q.Difference, q.Unit), Markup.Escape(q.Unit == "1" ? string.Empty : q.Unit));
        }

        output.Console.Write(table);
        foreach (WhatIfQuantity q in answer.Quantities.Where(static q => Shown.Contains(q.Name) && q.NotDefined is not null))
        {
            output.Wrapped("  – ", $"{q.Words}: not defined, {q.NotDefined}.");
        }

        output.Wrapped(string.Empty, string.Create(
            CultureInfo.InvariantCulture,
            $"The bands rest on {answer.Used} of {answer.Members} members of the fit; with fewer than half there would be none. Reflexes, drugs and bleeding do not follow by themselves."));
        output.Line();
        Arteries(answer.Arteries);
        lists.Sentences("Left out because", answer.LeftOutBecause);
        lists.Sentences("Warnings of the fit", answer.Warnings);
        lists.Sentences("What the readings leave open", answer.NotDetermined);
        lists.Patient(answer.Patient);
    }

    private void Arteries(ArterialChange? change)
    {
        if (change is null)
        {
            return;
        }

        if (change.Rows.Count == 0)
        {
            output.Wrapped("Arteries: ", change.Reason);
            output.Line();
            return;
        }

        Table table = CommandOutput.Titled("Who gets which blood (calculated, best fit, means of the beat)", string.Empty, "before", "after", "unit");
        foreach (ArterialChangeRow row in change.Rows)
        {
            string format = row.Unit == "mL/min" || row.Unit == "%" ? "F0" : "F1";
            table.AddRow(
                Markup.Escape(row.Words), row.Before.ToString(format, CultureInfo.InvariantCulture), row.After.ToString(format, CultureInfo.InvariantCulture), Markup.Escape(row.Unit));
        }

        output.Console.Write(table);
        output.Wrapped(string.Empty, $"The two flows meet {change.MeetingBefore}; after the change {change.MeetingAfter}.");
        output.Line();
    }

    private static string Band(Estimate? estimate, string unit)
    {
        if (estimate is not { } e)
        {
            return "–";
        }

        string format = unit switch { "L/min" or "Wood units" => "F1", "1" => "F2", _ => "F0" };
        string Of(double value)
        {
            string text = value.ToString(format, CultureInfo.InvariantCulture);
            return text.StartsWith('-') && text.Trim('-', '0', '.').Length == 0 ? text[1..] : text;
        }

        return $"{Of(e.Value)} ({Of(e.Low)} to {Of(e.High)})";
    }
}
