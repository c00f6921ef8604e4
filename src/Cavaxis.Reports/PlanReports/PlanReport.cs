using System.Globalization;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities;
using Cavaxis.Reports.AxisDrawings;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Reports.PlanReports;

/// <summary>The report of a planned case: the answer first, then the drawing, the pressures, the alternatives, steps, gaps and sources.</summary>
public static class PlanReport
{
    /// <summary>Writes the report as a document free of any format.</summary>
    /// <param name="result">What planning said.</param>
    /// <param name="rules">The rule book used.</param>
    /// <param name="catalogue">The catalogue used.</param>
    /// <returns>The document.</returns>
    public static ReportDocument Of(PlanningResult result, RuleBook rules, DeviceCatalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(catalogue);
        List<ReportBlock> blocks = [];
        if (result.Invented)
        {
            blocks.Add(new Callout(CalloutKind.Information, "Invented case", "This case was made up for demonstration. It describes no real person."));
        }

        if (result.Plans.Count == 0)
        {
            blocks.Add(new Callout(CalloutKind.Stop, "No plan", "No combination of devices fits these vessels and rules."));
        }
        else
        {
            Chosen(blocks, result, rules, catalogue);
        }

        blocks.Add(Alternatives(result));
        Next(blocks, result);
        if (result.Steps.Count > 0)
        {
            Steps(blocks, result.Steps);
        }

        Gaps(blocks, result);
        Sources(blocks, result, rules);
        string subtitle = FormattableString.Invariant(
            $"Cannulation plan. {result.Patient.AgeYears:G3} years, {result.Patient.HeightCm:F0} cm, {result.Patient.WeightKg:G4} kg. {result.Anatomies} sampled anatomies, seed {result.Seed}, rule book {result.RuleBookEdition}.");
        return new ReportDocument(result.CaseTitle, subtitle, result.Caution, blocks);
    }

    private static void Chosen(List<ReportBlock> blocks, PlanningResult result, RuleBook rules, DeviceCatalogue catalogue)
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
        blocks.Add(Cannulae(plan));
        blocks.Add(Positions(plan));
        blocks.Add(new Table(
            "Cautions",
            [new TableColumn("To bear in mind"), new TableColumn("What would resolve it"), new TableColumn("Source")],
            [.. plan.Findings.Where(f => f.Grade == FindingGrade.Caution).Select(f => (IReadOnlyList<string>)[f.Says, f.Resolve, f.Source.ToString()])],
            firstColumnIsHeader: false));
        blocks.Add(new Heading(2, "Pressure and flow"));
        blocks.Add(new Figure(PressureChart.Of(plan, rules), "Pressure before the pump and after the lung over pump flow (calculated).", PressureChart.Words(plan)));
        blocks.Add(Circuit(plan));
        blocks.Add(new Table(
            "Why this flow",
            [new TableColumn("Asked for by"), new TableColumn("L/min", ColumnAlign.Right), new TableColumn("Source"), new TableColumn("Used")],
            [.. plan.Flow.Candidates.Select(c => (IReadOnlyList<string>)[c.Reason, Number(c.FlowLPerMin, "F1"), c.Source.ToString(), c.Used ? "yes" : "no"])]));
        blocks.Add(new Table(
            "How the score comes about",
            [new TableColumn("Criterion"), new TableColumn("Value", ColumnAlign.Right), new TableColumn("Points 0-1", ColumnAlign.Right), new TableColumn("Weight", ColumnAlign.Right)],
            [.. plan.Criteria.Select(c => (IReadOnlyList<string>)[PlainCriterion.Words(c.Name), PlainCriterion.Value(c.Name, c.Value), Number(c.Points, "F2"), Number(c.Weight, "G4")])]));
    }

    private static Table Cannulae(CannulationPlan plan) => new(
        "Cannulae",
        [
            new TableColumn("Role"), new TableColumn("Device"), new TableColumn("Vessel"), new TableColumn("Of vessel", ColumnAlign.Right),
            new TableColumn("Depth cm (90 %)", ColumnAlign.Right), new TableColumn("Drop mmHg", ColumnAlign.Right), new TableColumn("In zone, imaging / blind", ColumnAlign.Right),
        ],
        [.. plan.Cannulae.Select(c => (IReadOnlyList<string>)
        [
            PlainWords.Role(c.Role),
            FormattableString.Invariant($"{c.OuterDiameterFrench:F0} Fr, {c.InsertableLengthCm:F0} cm: {c.Description}"),
            FormattableString.Invariant($"{PlainWords.Vessel(c.Route, c.Side)}, {c.VesselDiameterMm.Value:F1} mm ({JsonName.Of(c.VesselDiameterMm.Origin.ToString())})"),
            FormattableString.Invariant($"{c.CannulaToVessel.Value * 100:F0} % ({c.CannulaToVessel.Low * 100:F0}-{c.CannulaToVessel.High * 100:F0})"),
            c.Fit is null ? "to its hub mark" : FormattableString.Invariant($"{c.Fit.PlannedDepthCm.Value:F1} ({c.Fit.PlannedDepthCm.Low:F1}-{c.Fit.PlannedDepthCm.High:F1})"),
            FormattableString.Invariant($"{c.PressureDropMmHg.Value:F0} ± {c.PressureDropMmHg.Sd:F0}"),
            c.Fit is null ? "-" : FormattableString.Invariant($"{c.Fit.ProbabilityWithImaging * 100:F0} % / {c.Fit.ProbabilityAtPlannedDepth * 100:F0} %"),
        ])]);

    private static Table Positions(CannulationPlan plan) => new(
        "Where the ports come to lie at the planned depth (mm below the superior cavo-atrial junction; calculated)",
        [
            new TableColumn("Cannula"), new TableColumn("Port"), new TableColumn("Position (90 %)", ColumnAlign.Right),
            new TableColumn("Zone, median", ColumnAlign.Right), new TableColumn("In zone", ColumnAlign.Right), new TableColumn("Rule"),
        ],
        [.. plan.Cannulae.Where(c => c.Fit is not null).SelectMany(c => c.Fit!.Ports.Select(p => (IReadOnlyList<string>)
        [
            PlainWords.Role(c.Role),
            p.Port,
            FormattableString.Invariant($"{p.BelowScajMm.Value:F0} ({p.BelowScajMm.Low:F0} to {p.BelowScajMm.High:F0})"),
            FormattableString.Invariant($"{p.ZoneFromMm.Value:F0} to {p.ZoneToMm.Value:F0}"),
            FormattableString.Invariant($"{p.ProbabilityInZone * 100:F0} %"),
            p.RuleId,
        ]))]);

    private static Table Circuit(CannulationPlan plan)
    {
        CircuitPoint circuit = plan.Circuit;
        GasExchangeOutlook gas = plan.GasExchange;
        List<IReadOnlyList<string>> rows =
        [
            Row("pump flow", FormattableString.Invariant($"{circuit.FlowLPerMin:F1} L/min of {plan.Flow.FlowLPerMin.Value:F1} needed"), "calculated"),
            Row("pressure before the pump", Value(circuit.InletPressureMmHg, "F0", "mmHg"), Origin(circuit.InletPressureMmHg)),
            Row("pressure after the lung", Value(circuit.ReturnPressureMmHg, "F0", "mmHg"), Origin(circuit.ReturnPressureMmHg)),
            Row("pump speed", circuit.PumpSpeedPerMin is { } speed ? Value(speed, "F0", "per min") : "no speed of this pump reaches it", "calculated"),
            Row("sweep gas", circuit.SweepGasLPerMin is { } sweep ? Value(sweep, "F1", "L/min") : "beyond this lung", "calculated"),
            Row("arterial saturation", Value(gas.ArterialSaturationPercent, "F0", "%"), Origin(gas.ArterialSaturationPercent)),
            Row("oxygen delivery over consumption", Value(gas.DeliveryToConsumption, "F1", "times"), Origin(gas.DeliveryToConsumption)),
            Row("recirculation", FormattableString.Invariant($"{gas.RecirculationFractionBounds.Low * 100:F0} to {gas.RecirculationFractionBounds.High * 100:F0} % (bounds, not a prediction)"), "calculated"),
        ];
        return new Table("The circuit at this flow", [new TableColumn("Quantity"), new TableColumn("Value (90 % interval)"), new TableColumn("Origin")], rows);

        static IReadOnlyList<string> Row(string name, string value, string origin) => [name, value, origin];
    }

    private static Table Alternatives(PlanningResult result) => new(
        "All plans, best first; a plan with a stop comes after all plans without",
        [
            new TableColumn("Rank", ColumnAlign.Right, 2), new TableColumn("Plan", Weight: 7), new TableColumn("Fr", Weight: 5), new TableColumn("L/min", ColumnAlign.Right, 3),
            new TableColumn("Inlet mmHg", ColumnAlign.Right, 3), new TableColumn("Fit", ColumnAlign.Right, 3), new TableColumn("SaO2", ColumnAlign.Right, 3),
            new TableColumn("DO2: VO2", ColumnAlign.Right, 3), new TableColumn("Score", ColumnAlign.Right, 3), new TableColumn("Findings", Weight: 4), new TableColumn("Pareto front", Weight: 3),
        ],
        [.. result.Plans.Select(p => (IReadOnlyList<string>)
        [
            p.Rank.ToString(CultureInfo.InvariantCulture),
            ConfigurationTable.Of(p.Configuration).ShortName,
            string.Join("/", p.Cannulae.Select(c => c.OuterDiameterFrench.ToString("F0", CultureInfo.InvariantCulture))),
            Number(p.Circuit.FlowLPerMin, "F1"),
            Number(p.Circuit.InletPressureMmHg.Value, "F0"),
            FormattableString.Invariant($"{p.ProbabilityAllPortsInZone * 100:F0} %"),
            FormattableString.Invariant($"{p.GasExchange.ArterialSaturationPercent.Value:F0} %"),
            Number(p.GasExchange.DeliveryToConsumption.Value, "F1"),
            Number(p.Score, "F2"),
            Grades(p),
            p.OnParetoFront ? "yes" : "no",
        ])]);

    private static string Grades(CannulationPlan plan)
    {
        int stops = plan.Findings.Count(finding => finding.Grade == FindingGrade.Stop);
        int warnings = plan.Findings.Count(finding => finding.Grade == FindingGrade.Warning);
        return stops > 0 ? FormattableString.Invariant($"STOP {stops}, warn {warnings}") : FormattableString.Invariant($"warn {warnings}");
    }

    private static void Next(List<ReportBlock> blocks, PlanningResult result)
    {
        foreach (NotPlanned none in result.NotPlanned)
        {
            blocks.Add(new Paragraph($"Not planned: {ConfigurationTable.Of(none.Configuration).Name}: {none.Reason}."));
        }

        if (result.NextMeasurements.Count == 0)
        {
            return;
        }

        blocks.Add(new Heading(2, "Which measurement would make this plan surer"));
        blocks.Add(new Table(
            "Expected narrowing by one more measurement of the usual error (calculated)",
            [
                new TableColumn("Measure"), new TableColumn("Error", ColumnAlign.Right), new TableColumn("Doubt about fit removed", ColumnAlign.Right),
                new TableColumn("Depth ± cm, now to after", ColumnAlign.Right), new TableColumn("How"),
            ],
            [.. result.NextMeasurements.Select(Row)]));

        static IReadOnlyList<string> Row(MeasurementValue m) =>
        [
            PlainWords.FromName(m.Dimension.ToString()),
            FormattableString.Invariant($"{m.MeasurementSd:G3} {m.Unit}"),
            FormattableString.Invariant($"{m.FitNarrowing * 100:F0} % ({m.FitVarianceNow:F3} to {m.FitVarianceAfter:F3})"),
            FormattableString.Invariant($"{m.DepthSdNowCm:F1} to {m.DepthSdAfterCm:F1}"),
            m.How,
        ];
    }

    private static void Steps(List<ReportBlock> blocks, IReadOnlyList<ProcedureStep> steps)
    {
        blocks.Add(new PageBreak());
        blocks.Add(new Heading(2, "Steps"));
        blocks.Add(new Paragraph("Common practice; local protocol and the device's instructions for use come first."));
        blocks.Add(new Table(
            "Steps with the evidence they need",
            [
                new TableColumn("No.", ColumnAlign.Right, 1), new TableColumn("Do", Weight: 8), new TableColumn("Hard stop", Weight: 6),
                new TableColumn("Shown by / not shown by", Weight: 9), new TableColumn("Pitfall", Weight: 6),
            ],
            [.. steps.Select(s => (IReadOnlyList<string>)
            [
                s.Number.ToString(CultureInfo.InvariantCulture),
                s.Action,
                s.HardStop is null ? "-" : $"STOP unless: {s.HardStop}",
                Evidence(s),
                s.Pitfall ?? "-",
            ])]));
    }

    private static string Evidence(ProcedureStep step)
    {
        string shown = step.ShowsIt.Count == 0 ? "-" : $"Shown by: {string.Join("; ", step.ShowsIt)}.";
        string missing = step.EvidenceAvailable ? string.Empty : " NONE OF THESE IS KNOWN TO BE ON HAND.";
        string hidden = step.CannotShowIt.Count == 0 ? string.Empty : $" Not shown: {string.Join("; ", step.CannotShowIt)}.";
        return shown + missing + hidden;
    }

    private static void Gaps(List<ReportBlock> blocks, PlanningResult result)
    {
        blocks.Add(new Heading(2, "What is missing, odd, or was not checked"));
        if (result.Missing.Count > 0)
        {
            blocks.Add(new Table(
                "Missing from the case",
                [new TableColumn("Field"), new TableColumn("Used instead"), new TableColumn("Matters for")],
                [.. result.Missing.Select(m => (IReadOnlyList<string>)[m.Field, m.UsedInstead, m.Matters])]));
        }

        if (result.Surprises.Count > 0)
        {
            blocks.Add(new Heading(3, "Odd in the case"));
            blocks.Add(new BulletList(result.Surprises));
        }

        if (result.LoosenedRules.Count > 0)
        {
            blocks.Add(new Callout(CalloutKind.Warning, "Rules looser than the built-in ones", string.Join("\n", result.LoosenedRules)));
        }

        blocks.Add(new Heading(3, "Not checked"));
        blocks.Add(new BulletList(result.NotChecked));
    }

    private static void Sources(List<ReportBlock> blocks, PlanningResult result, RuleBook rules)
    {
        blocks.Add(new Heading(2, "Numbers and sources"));
        blocks.Add(new Table(
            "This patient's axis",
            [new TableColumn("Dimension"), new TableColumn("Value (90 % interval)", ColumnAlign.Right), new TableColumn("Origin"), new TableColumn("Population value from")],
            [.. result.Axis.Select(a => (IReadOnlyList<string>)
            [
                PlainWords.FromName(a.Dimension.ToString()), Value(a.Value, a.Unit == "1" ? "F2" : "F0", a.Unit), Origin(a.Value), a.PopulationSource.ToString(),
            ])]));
        blocks.Add(new Table(
            "Limits and targets",
            [new TableColumn("Limit"), new TableColumn("Value", ColumnAlign.Right), new TableColumn("Why"), new TableColumn("Source")],
            [.. rules.Limits.Select(l => (IReadOnlyList<string>)
            [
                PlainWords.FromName(l.Name.ToString()), Number(l.Value, "G4"), l.Rationale, new Source(l.Citation, l.Certainty).ToString(),
            ])]));
        blocks.Add(new Table(
            "Zones of this plan's ports",
            [new TableColumn("Rule"), new TableColumn("Why"), new TableColumn("Source")],
            [.. rules.Zones
                .Where(z => result.Plans.Count > 0 && z.Configurations.Contains(result.Plans[result.ChosenPlan - 1].Configuration))
                .Select(z => (IReadOnlyList<string>)[z.Id, z.Rationale, new Source(z.Citation, z.Certainty).ToString()])]));
    }

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private static string Value(Estimate e, string format, string unit) =>
        $"{Number(e.Value, format)} {unit} ({Number(e.Low, format)} to {Number(e.High, format)})";

    private static string Origin(Estimate e) => JsonName.Of(e.Origin.ToString());
}
