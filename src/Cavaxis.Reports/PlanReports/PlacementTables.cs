using Cavaxis.Planning.Plans;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Reports.PlanReports;

/// <summary>Which cannulae go where, and where their ports come to lie.</summary>
internal static class PlacementTables
{
    /// <summary>The cannulae.</summary>
    public static Table Cannulae(CannulationPlan plan) => new(
        "Cannulae",
        [
            new TableColumn("Role"), new TableColumn("Device"), new TableColumn("Vessel"), new TableColumn("Of vessel", ColumnAlign.Right),
            new TableColumn("Depth cm (90 %)", ColumnAlign.Right), new TableColumn("Drop mmHg", ColumnAlign.Right), new TableColumn("In zone, imaging / blind", ColumnAlign.Right),
        ],
        [.. plan.Cannulae.Select(c => (IReadOnlyList<string>)
        [
            PlainWords.Role(c.Role),
            FormattableString.Invariant($"{c.OuterDiameterFrench:F0} Fr, {c.InsertableLengthCm:F0} cm: {c.Description}"),
            FormattableString.Invariant($"{PlainWords.Vessel(c.Route, c.Side)}, {c.VesselDiameterMm.Value:F1} mm ({ReportNumber.Origin(c.VesselDiameterMm)})"),
            FormattableString.Invariant($"{c.CannulaToVessel.Value * 100:F0} % ({c.CannulaToVessel.Low * 100:F0}-{c.CannulaToVessel.High * 100:F0})"),
            c.Fit is null ? "to its hub mark" : FormattableString.Invariant($"{c.Fit.PlannedDepthCm.Value:F1} ({c.Fit.PlannedDepthCm.Low:F1}-{c.Fit.PlannedDepthCm.High:F1})"),
            FormattableString.Invariant($"{c.PressureDropMmHg.Value:F0} ± {c.PressureDropMmHg.Sd:F0}"),
            c.Fit is null ? "-" : FormattableString.Invariant($"{c.Fit.ProbabilityWithImaging * 100:F0} % / {c.Fit.ProbabilityAtPlannedDepth * 100:F0} %"),
        ])]);

    /// <summary>Their ports.</summary>
    public static Table Positions(CannulationPlan plan) => new(
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
}
