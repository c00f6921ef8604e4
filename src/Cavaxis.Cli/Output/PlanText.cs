using System.Globalization;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities;
using Spectre.Console;

namespace Cavaxis.Cli.Output;

/// <summary>The result of planning for a terminal: the answer first, then why, what is missing, and what to do.</summary>
/// <param name="output">Where to.</param>
internal sealed class PlanText(CommandOutput output)
{
    /// <summary>Writes everything.</summary>
    /// <param name="result">The result.</param>
    public void Write(PlanningResult result)
    {
        output.Line($"{result.CaseTitle}{(result.Invented ? "  [INVENTED CASE]" : string.Empty)}");
        output.Wrapped(string.Empty, result.Caution);
        output.Line();
        Answer(result);
        Patient(result.Patient);
        new PlanRankingText(output).Write(result);
        if (result.Plans.Count > 0)
        {
            new PlanDetailText(output).Write(result);
            new PlanStepsText(output).Write(result.Steps);
        }

        Lists(result);
        output.Line(FormattableString.Invariant($"{result.Anatomies} sampled anatomies, seed {result.Seed}, rule book {result.RuleBookEdition}."));
    }

    /// <summary>The answer in two lines, before anything else.</summary>
    private void Answer(PlanningResult result)
    {
        if (result.Plans.Count == 0)
        {
            output.Wrapped("ANSWER: ", "no plan can be made with these devices and vessels.");
        }
        else
        {
            CannulationPlan best = result.Plans[0];
            string stop = result.EveryPlanIsStopped ? "every plan carries a HARD STOP; nearest to possible: " : string.Empty;
            output.Wrapped("ANSWER: ", $"{stop}{best.Name}; {string.Join(", ", best.Cannulae.Select(Placed))}.");
        }

        output.Line();
    }

    private static string Placed(PlacedCannula cannula) => string.Create(
        CultureInfo.InvariantCulture,
        $"{cannula.OuterDiameterFrench:F0} Fr {PlainWords.Role(cannula.Role)} through the {PlainWords.Vessel(cannula.Route, cannula.Side)}{(cannula.Fit is null ? string.Empty : string.Create(CultureInfo.InvariantCulture, $" to {cannula.Fit.PlannedDepthCm.Value:F1} cm"))}");

    private void Patient(PatientPicture patient)
    {
        Table table = CommandOutput.Titled("The patient as planning sees it", "", "value", "90 % interval", "origin");
        Row(table, "body surface", patient.BodySurfaceAreaM2, "m²", "F2");
        Row(table, "haemoglobin", patient.HaemoglobinGPerDl, "g/dL", "F1");
        Row(table, "blood viscosity", patient.BloodViscosityMPaS, "mPa s", "F1");
        Row(table, "cardiac output", patient.CardiacOutputLPerMin, "L/min", "F1");
        Row(table, "oxygen consumption", patient.OxygenConsumptionMlPerMin, "mL/min", "F0");
        output.Console.Write(table);
    }

    private static void Row(Table table, string name, Estimate estimate, string unit, string format) => table.AddRow(
        name,
        $"{estimate.Value.ToString(format, CultureInfo.InvariantCulture)} {unit}",
        $"{estimate.Low.ToString(format, CultureInfo.InvariantCulture)} to {estimate.High.ToString(format, CultureInfo.InvariantCulture)}",
        JsonName.Of(estimate.Origin.ToString()));

    private void Lists(PlanningResult result)
    {
        List("Missing from the case, and what was used instead", result.Missing.Select(m => $"{m.Field}: {m.UsedInstead}; matters for {m.Matters}"));
        List("Odd in the case", result.Surprises);
        List("Rules looser than the built-in ones", result.LoosenedRules);
        List("Not checked", result.NotChecked);
    }

    private void List(string title, IEnumerable<string> items)
    {
        string[] all = [.. items];
        if (all.Length == 0)
        {
            return;
        }

        output.Line(title);
        foreach (string item in all)
        {
            output.Wrapped("  - ", item);
        }

        output.Line();
    }
}
