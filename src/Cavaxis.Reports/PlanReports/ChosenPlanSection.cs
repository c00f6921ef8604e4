using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Reports.AxisDrawings;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Reports.PlanReports;

/// <summary>The chosen plan: explanation, stops and warnings, drawing, pressures, flow and score.</summary>
internal static class ChosenPlanSection
{
    /// <summary>Adds the section.</summary>
    public static void Add(List<ReportBlock> blocks, PlanningResult result, RuleBook rules, DeviceCatalogue catalogue)
    {
        CannulationPlan plan = result.Plans[result.ChosenPlan - 1];
        blocks.Add(new Heading(2, FormattableString.Invariant($"Plan {plan.Rank}: {plan.Name}")));
        blocks.Add(new BulletList(plan.Explanation));
        foreach (PlanFinding finding in plan.Findings.Where(f => f.Grade != FindingGrade.Caution))
        {
            CalloutKind kind = finding.Grade == FindingGrade.Stop ? CalloutKind.Stop : CalloutKind.Warning;
            blocks.Add(new Callout(kind, finding.Says, $"{finding.Resolve} Source: {finding.Source}."));
        }

        AxisScene scene = PlanScene.Of(result, plan, catalogue);
        blocks.Add(new Figure(AxisDrawing.Of(scene), "Axis and cannulae to scale, seen from the front. Positions are calculated; bands are 90 % intervals.", scene.Description));
        blocks.Add(PlacementTables.Cannulae(plan));
        blocks.Add(PlacementTables.Positions(plan));
        blocks.Add(new Table(
            "Cautions",
            [new TableColumn("To bear in mind"), new TableColumn("What would resolve it"), new TableColumn("Source")],
            [.. plan.Findings.Where(f => f.Grade == FindingGrade.Caution).Select(f => (IReadOnlyList<string>)[f.Says, f.Resolve, f.Source.ToString()])],
            firstColumnIsHeader: false));
        blocks.Add(new Heading(2, "Pressure and flow"));
        blocks.Add(new Figure(PressureChart.Of(plan, rules), "Pressure before the pump and after the lung over pump flow (calculated).", PressureChart.Words(plan)));
        blocks.Add(Circuit(plan));
        blocks.Add(new BulletList([.. OutlookSentences.Of(plan)]));
        blocks.Add(new Table(
            "Why this flow",
            [new TableColumn("Asked for by"), new TableColumn("L/min", ColumnAlign.Right), new TableColumn("Source"), new TableColumn("Used")],
            [.. plan.Flow.Candidates.Select(c => (IReadOnlyList<string>)[c.Reason, ReportNumber.Plain(c.FlowLPerMin, "F1"), c.Source.ToString(), c.Used ? "yes" : "no"])]));
        blocks.Add(new Table(
            "How the score comes about",
            [new TableColumn("Criterion"), new TableColumn("Value", ColumnAlign.Right), new TableColumn("Points 0-1", ColumnAlign.Right), new TableColumn("Weight", ColumnAlign.Right)],
            [.. plan.Criteria.Select(c => (IReadOnlyList<string>)[PlainCriterion.Words(c.Name), PlainCriterion.Value(c.Name, c.Value), ReportNumber.Plain(c.Points, "F2"), ReportNumber.Plain(c.Weight, "G4")])]));
    }

    private static Table Circuit(CannulationPlan plan)
    {
        CircuitPoint circuit = plan.Circuit;
        GasExchangeOutlook gas = plan.GasExchange;
        List<IReadOnlyList<string>> rows =
        [
            Row("pump flow", FormattableString.Invariant($"{circuit.FlowLPerMin:F1} L/min of {plan.Flow.FlowLPerMin.Value:F1} needed"), "calculated"),
            Row("pressure before the pump", ReportNumber.WithInterval(circuit.InletPressureMmHg, "F0", "mmHg"), ReportNumber.Origin(circuit.InletPressureMmHg)),
            Row("pressure after the lung", ReportNumber.WithInterval(circuit.ReturnPressureMmHg, "F0", "mmHg"), ReportNumber.Origin(circuit.ReturnPressureMmHg)),
            Row("pump speed", circuit.PumpSpeedPerMin is { } speed ? ReportNumber.WithInterval(speed, "F0", "per min") : "no speed of this pump reaches it", "calculated"),
            Row("sweep gas", circuit.SweepGasLPerMin is { } sweep ? ReportNumber.WithInterval(sweep, "F1", "L/min") : "beyond this lung", "calculated"),
            Row("arterial saturation", ReportNumber.WithInterval(gas.ArterialSaturationPercent, "F0", "%"), ReportNumber.Origin(gas.ArterialSaturationPercent)),
            Row("oxygen delivery over consumption", ReportNumber.WithInterval(gas.DeliveryToConsumption, "F1", "times"), ReportNumber.Origin(gas.DeliveryToConsumption)),
        ];
        return new Table("The circuit at this flow", [new TableColumn("Quantity"), new TableColumn("Value (90 % interval)"), new TableColumn("Origin")], rows);

        static IReadOnlyList<string> Row(string name, string value, string origin) => [name, value, origin];
    }
}
