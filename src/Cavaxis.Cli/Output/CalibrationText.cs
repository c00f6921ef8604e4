using System.Globalization;
using Cavaxis.Planning.Running;
using Spectre.Console;

namespace Cavaxis.Cli.Output;

/// <summary>A calibration for a terminal: readings beside the fit, then the numbers, then what stays open.</summary>
/// <param name="output">Where to.</param>
internal sealed class CalibrationText(CommandOutput output)
{
    private const double UnlikelyMisfit = 0.01;

    /// <summary>Writes everything.</summary>
    /// <param name="answer">The calibration.</param>
    public void Write(CalibrationAnswer answer)
    {
        RunningLists lists = new(output);
        lists.Head(answer.CaseTitle, answer.Invented, answer.Caution);
        if (!answer.Found)
        {
            output.Wrapped("NO FIT: ", answer.Reason);
            output.Line();
            lists.Patient(answer.Patient);
            return;
        }

        string fits = answer.MisfitProbability < UnlikelyMisfit ? "the readings hardly fit one circulation" : "the readings fit one circulation";
        output.Wrapped("ANSWER: ", string.Create(
            CultureInfo.InvariantCulture,
            $"{fits} (chance of a larger misfit {answer.MisfitProbability:P0}); {answer.Parameters.Count(static p => p.IsDetermined)} of {answer.Parameters.Count} fitted numbers are determined by them."));
        output.Line();
        lists.Sentences("Warnings", answer.Warnings);
        Readings(answer);
        Parameters(answer);
        lists.Sentences("What the readings leave open", answer.NotDetermined);
        output.Line(string.Create(
            CultureInfo.InvariantCulture, $"{answer.Rounds} rounds{(answer.Converged ? string.Empty : ", ended without coming to rest")}; {answer.Members} members, seed {answer.Seed}."));
        output.Line();
        lists.Patient(answer.Patient);
    }

    private void Readings(CalibrationAnswer answer)
    {
        Table table = CommandOutput.Titled("Readings (measured) beside the fit (calculated)", string.Empty, "read", "fitted", "unit", "off by sd");
        table.Columns[1].RightAligned();
        table.Columns[2].RightAligned();
        foreach (CalibratedReading r in answer.Readings)
        {
            table.AddRow(
                Markup.Escape(r.Words), string.Create(CultureInfo.InvariantCulture, $"{r.Observed.Value:G4} ± {r.Observed.Sd:G2}"), r.Fitted.ToString("G4", CultureInfo.InvariantCulture),
                Markup.Escape(r.Unit), r.TakenDirectly ? "set" : r.ResidualSd.ToString("F1", CultureInfo.InvariantCulture));
        }

        output.Console.Write(table);
    }

    private void Parameters(CalibrationAnswer answer)
    {
        Table table = CommandOutput.Titled("Numbers of the patient (estimated from the readings)", string.Empty, "before", "after", "90 % interval", "unit", "learnt");
        foreach (CalibratedParameter p in answer.Parameters)
        {
            table.AddRow(
                Markup.Escape(p.Meaning.TrimEnd('.')), p.Before.Value.ToString("G3", CultureInfo.InvariantCulture), p.After.Value.ToString("G3", CultureInfo.InvariantCulture),
                string.Create(CultureInfo.InvariantCulture, $"{p.After.Low:G3} to {p.After.High:G3}"), Markup.Escape(p.Unit), CommandOutput.Percent(Math.Max(0, p.Determined)));
        }

        output.Console.Write(table);
    }
}
