using System.Globalization;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities;
using Spectre.Console;

namespace Cavaxis.Cli.Output;

/// <summary>The result of planning for a terminal: the answer first, then why, what is missing, and what to do.</summary>
/// <param name="output">Where to.</param>
internal sealed class PlanText(CommandOutput output)
{
    private const int ShownMeasurements = 6;

    /// <summary>Writes everything.</summary>
    /// <param name="result">The result.</param>
    public void Write(PlanningResult result)
    {
        output.Line($"{result.CaseTitle}{(result.Invented ? "  [INVENTED CASE]" : string.Empty)}");
        Wrapped(string.Empty, result.Caution);
        output.Line();
        Answer(result);
        Patient(result.Patient);
        Ranking(result);
        if (result.Plans.Count > 0)
        {
            Chosen(result);
            Next(result);
            Steps(result.Steps);
        }

        Lists(result);
        output.Line(FormattableString.Invariant($"{result.Anatomies} sampled anatomies, seed {result.Seed}, rule book {result.RuleBookEdition}."));
    }

    /// <summary>The answer in two lines, before anything else.</summary>
    private void Answer(PlanningResult result)
    {
        if (result.Plans.Count == 0)
        {
            Wrapped("ANSWER: ", "no plan can be made with these devices and vessels.");
        }
        else
        {
            CannulationPlan best = result.Plans[0];
            string stop = result.EveryPlanIsStopped ? "every plan carries a HARD STOP; nearest to possible: " : string.Empty;
            Wrapped("ANSWER: ", $"{stop}{best.Name}; {string.Join(", ", best.Cannulae.Select(Placed))}.");
        }

        output.Line();
    }

    private static string Placed(PlacedCannula cannula) => string.Create(
        CultureInfo.InvariantCulture,
        $"{cannula.OuterDiameterFrench:F0} Fr {PlainWords.Role(cannula.Role)} through the {PlainWords.Vessel(cannula.Route, cannula.Side)}{(cannula.Fit is null ? string.Empty : string.Create(CultureInfo.InvariantCulture, $" to {cannula.Fit.PlannedDepthCm.Value:F1} cm"))}");

    private void Patient(PatientPicture patient)
    {
        Table table = Titled("The patient as planning sees it", "", "value", "90 % interval", "origin");
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

    private void Ranking(PlanningResult result)
    {
        Table table = Titled("Plans, best first (calculated)", "", "plan", "Fr", "L/min", "inlet", "fit", "SaO2", "DO2:VO2", "score", "marks");
        foreach (TableColumn column in table.Columns)
        {
            column.NoWrap().Padding(0, 1);
        }

        foreach (CannulationPlan plan in result.Plans)
        {
            table.AddRow(
                plan.Rank.ToString(CultureInfo.InvariantCulture),
                Markup.Escape(ConfigurationTable.Of(plan.Configuration).ShortName),
                string.Join("/", plan.Cannulae.Select(c => c.OuterDiameterFrench.ToString("F0", CultureInfo.InvariantCulture))),
                plan.Circuit.FlowLPerMin.ToString("F1", CultureInfo.InvariantCulture),
                plan.Circuit.InletPressureMmHg.Value.ToString("F0", CultureInfo.InvariantCulture),
                Percent(plan.ProbabilityAllPortsInZone),
                string.Create(CultureInfo.InvariantCulture, $"{plan.GasExchange.ArterialSaturationPercent.Value:F0} %"),
                plan.GasExchange.DeliveryToConsumption.Value.ToString("F1", CultureInfo.InvariantCulture),
                plan.Score.ToString("F2", CultureInfo.InvariantCulture),
                Marks(plan));
        }

        output.Console.Write(table);
        Wrapped(string.Empty, "Fr: cannulae in the order drainage / return; inlet: mmHg before the pump; fit: probability that every port can be brought into its zone under imaging; STOP and warn: number of findings of that grade; P: on the Pareto front, no other plan is as good in everything and better in something.");
        foreach (NotPlanned none in result.NotPlanned)
        {
            output.Line($"Not planned: {ConfigurationTable.Of(none.Configuration).Name}: {none.Reason}.");
        }

        output.Line();
    }

    private static string Marks(CannulationPlan plan)
    {
        int stops = plan.Findings.Count(finding => finding.Grade == FindingGrade.Stop);
        int warnings = plan.Findings.Count(finding => finding.Grade == FindingGrade.Warning);
        List<string> marks = [];
        if (stops > 0)
        {
            marks.Add($"STOP {stops}");
        }

        if (warnings > 0)
        {
            marks.Add($"warn {warnings}");
        }

        if (plan.OnParetoFront)
        {
            marks.Add("P");
        }

        return string.Join(' ', marks);
    }

    private void Chosen(PlanningResult result)
    {
        CannulationPlan plan = result.Plans[result.ChosenPlan - 1];
        output.Line($"Plan {plan.Rank}: {plan.Name}");
        foreach (string sentence in plan.Explanation)
        {
            Wrapped("  ", sentence);
        }

        Table table = Titled("Cannulae of this plan", "role", "device", "vessel", "of vessel", "depth cm", "drop mmHg", "in zone");
        foreach (PlacedCannula cannula in plan.Cannulae)
        {
            table.AddRow(
                PlainWords.Role(cannula.Role),
                Markup.Escape(cannula.DeviceId),
                Markup.Escape(PlainWords.Vessel(cannula.Route, cannula.Side)),
                string.Create(CultureInfo.InvariantCulture, $"{cannula.CannulaToVessel.Value * 100:F0} %"),
                cannula.Fit is null ? "hub" : string.Create(CultureInfo.InvariantCulture, $"{cannula.Fit.PlannedDepthCm.Value:F1} ({cannula.Fit.PlannedDepthCm.Low:F1}-{cannula.Fit.PlannedDepthCm.High:F1})"),
                string.Create(CultureInfo.InvariantCulture, $"{cannula.PressureDropMmHg.Value:F0} ± {cannula.PressureDropMmHg.Sd:F0}"),
                cannula.Fit is null ? "-" : $"{Percent(cannula.Fit.ProbabilityWithImaging)} (blind {Percent(cannula.Fit.ProbabilityAtPlannedDepth)})");
        }

        output.Console.Write(table);
        CircuitPoint circuit = plan.Circuit;
        output.Line(string.Create(
            CultureInfo.InvariantCulture,
            $"Circuit at {circuit.FlowLPerMin:F1} L/min: {(circuit.PumpSpeedPerMin is { } speed ? $"{speed.Value:F0} ± {speed.Sd:F0} per min" : "no pump speed reaches it")}; sweep {(circuit.SweepGasLPerMin is { } sweep ? $"{sweep.Value:F1} ± {sweep.Sd:F1} L/min" : "beyond the lung")}; oxygen delivery {plan.GasExchange.DeliveryToConsumption.Value:F1} x consumption;"));
        output.Line(string.Create(
            CultureInfo.InvariantCulture,
            $"recirculation between {plan.GasExchange.RecirculationFractionBounds.Low * 100:F0} and {plan.GasExchange.RecirculationFractionBounds.High * 100:F0} % (bounds: separated and complete mixing)."));
        output.Line();
        Findings(plan);
        Criteria(plan);
    }

    private void Findings(CannulationPlan plan)
    {
        Table table = Titled("Findings of this plan", "grade", "what", "what would resolve it");
        foreach (PlanFinding finding in plan.Findings)
        {
            table.AddRow(finding.Grade.ToString().ToUpperInvariant(), Markup.Escape(finding.Says), Markup.Escape(finding.Resolve));
        }

        if (plan.Findings.Count == 0)
        {
            table.AddRow("-", "no rule spoke; see what was not checked", string.Empty);
        }

        output.Console.Write(table);
    }

    private void Criteria(CannulationPlan plan)
    {
        Table table = Titled("How its score comes about", "criterion", "value", "points 0-1", "weight");
        foreach (CriterionValue criterion in plan.Criteria.Where(criterion => criterion.Weight > 0))
        {
            table.AddRow(
                $"{PlainCriterion.Words(criterion.Name)} ({JsonName.Of(criterion.Name.ToString())})",
                PlainCriterion.Value(criterion.Name, criterion.Value),
                criterion.Points.ToString("F2", CultureInfo.InvariantCulture),
                criterion.Weight.ToString("G4", CultureInfo.InvariantCulture));
        }

        output.Console.Write(table);
    }

    private void Next(PlanningResult result)
    {
        if (result.NextMeasurements.Count == 0)
        {
            output.Line("No single missing measurement would make this plan surer by one part in a hundred.");
            output.Line();
            return;
        }

        Table table = Titled("Which measurement would make this plan surer", "measure", "± error", "fit surer by", "depth ± cm", "how");
        foreach (MeasurementValue value in result.NextMeasurements.Take(ShownMeasurements))
        {
            table.AddRow(
                PlainWords.FromName(value.Dimension.ToString()),
                string.Create(CultureInfo.InvariantCulture, $"{value.MeasurementSd:G3} {value.Unit}"),
                string.Create(CultureInfo.InvariantCulture, $"{value.FitNarrowing * 100:F0} % of {value.FitVarianceNow:F3}"),
                string.Create(CultureInfo.InvariantCulture, $"{value.DepthSdNowCm:F1} to {value.DepthSdAfterCm:F1}"),
                Markup.Escape(value.How));
        }

        output.Console.Write(table);
    }

    private void Steps(IReadOnlyList<ProcedureStep> steps)
    {
        output.Line("Steps (common practice; local protocol and the device's instructions come first)");
        foreach (ProcedureStep step in steps)
        {
            Wrapped($"{step.Number,3}. ", step.Action);
            if (step.HardStop is not null)
            {
                Wrapped("     HARD STOP: ", step.HardStop);
            }

            if (step.ShowsIt.Count > 0)
            {
                Wrapped("     shown by: ", string.Join("; ", step.ShowsIt) + (step.EvidenceAvailable ? string.Empty : ". NONE OF THESE IS KNOWN TO BE ON HAND"));
            }

            if (step.CannotShowIt.Count > 0)
            {
                Wrapped("     not shown: ", string.Join("; ", step.CannotShowIt));
            }

            if (step.Pitfall is not null)
            {
                Wrapped("     pitfall: ", step.Pitfall);
            }
        }

        output.Line();
    }

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
            Wrapped("  - ", item);
        }

        output.Line();
    }

    /// <summary>Breaks a text at spaces so that no line is wider than a table; further lines are set in.</summary>
    private void Wrapped(string lead, string text)
    {
        string line = lead;
        string indent = new(' ', Math.Min(lead.Length, 5));
        bool empty = true;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!empty && line.Length + word.Length + 1 > CommandOutput.Width)
            {
                output.Line(line);
                line = indent;
                empty = true;
            }

            line += empty ? word : $" {word}";
            empty = false;
        }

        output.Line(line);
    }

    private static Table Titled(string title, params string[] columns) => new Table()
        .Border(TableBorder.Simple)
        .Title(Markup.Escape(title))
        .AddColumns(columns);

    private static string Percent(double probability) => string.Create(CultureInfo.InvariantCulture, $"{probability * 100:F0} %");
}
