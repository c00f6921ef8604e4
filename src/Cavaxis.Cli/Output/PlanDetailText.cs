using System.Globalization;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;
using Spectre.Console;

namespace Cavaxis.Cli.Output;

/// <summary>The chosen plan in full: why, cannulae, circuit, findings, score, and the next measurement.</summary>
/// <param name="output">Where to.</param>
internal sealed class PlanDetailText(CommandOutput output)
{
    private const int ShownMeasurements = 6;

    /// <summary>Writes the plan.</summary>
    /// <param name="result">The result.</param>
    public void Write(PlanningResult result)
    {
        CannulationPlan plan = result.Plans[result.ChosenPlan - 1];
        output.Line($"Plan {plan.Rank}: {plan.Name}");
        foreach (string sentence in plan.Explanation)
        {
            output.Wrapped("  ", sentence);
        }

        Table table = CommandOutput.Titled("Cannulae of this plan", "role", "device", "vessel", "of vessel", "depth cm", "drop mmHg", "in zone");
        foreach (PlacedCannula cannula in plan.Cannulae)
        {
            table.AddRow(
                PlainWords.Role(cannula.Role),
                Markup.Escape(cannula.DeviceId),
                Markup.Escape(PlainWords.Vessel(cannula.Route, cannula.Side)),
                string.Create(CultureInfo.InvariantCulture, $"{cannula.CannulaToVessel.Value * 100:F0} %"),
                cannula.Fit is null ? "hub" : string.Create(CultureInfo.InvariantCulture, $"{cannula.Fit.PlannedDepthCm.Value:F1} ({cannula.Fit.PlannedDepthCm.Low:F1}-{cannula.Fit.PlannedDepthCm.High:F1})"),
                string.Create(CultureInfo.InvariantCulture, $"{cannula.PressureDropMmHg.Value:F0} ± {cannula.PressureDropMmHg.Sd:F0}"),
                cannula.Fit is null ? "-" : $"{CommandOutput.Percent(cannula.Fit.ProbabilityWithImaging)} (blind {CommandOutput.Percent(cannula.Fit.ProbabilityAtPlannedDepth)})");
        }

        output.Console.Write(table);
        CircuitPoint circuit = plan.Circuit;
        output.Line(string.Create(
            CultureInfo.InvariantCulture,
            $"Circuit at {circuit.FlowLPerMin:F1} L/min: {(circuit.PumpSpeedPerMin is { } speed ? FormattableString.Invariant($"{speed.Value:F0} ± {speed.Sd:F0} per min") : "no pump speed reaches it")}; sweep {(circuit.SweepGasLPerMin is { } sweep ? FormattableString.Invariant($"{sweep.Value:F1} ± {sweep.Sd:F1} L/min") : "beyond the lung")}; oxygen delivery {plan.DeliveryToConsumption().Value:F1} x consumption;"));
        Circulation(plan);
        output.Line();
        Findings(plan);
        Criteria(plan);
        Next(result);
    }

    private void Circulation(CannulationPlan plan)
    {
        foreach (string line in OutlookSentences.Of(plan))
        {
            output.Wrapped("  ", line);
        }
    }

    private void Findings(CannulationPlan plan)
    {
        Table table = CommandOutput.Titled("Findings of this plan", "grade", "what", "what would resolve it");
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
        Table table = CommandOutput.Titled("How its score comes about", "criterion", "value", "points 0-1", "weight");
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

        Table table = CommandOutput.Titled("Which measurement would make this plan surer", "measure", "± error", "fit surer by", "depth ± cm", "how");
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
}
