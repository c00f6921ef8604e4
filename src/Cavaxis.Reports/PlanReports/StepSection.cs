using System.Globalization;
using Cavaxis.Planning.Steps;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Reports.PlanReports;

/// <summary>The step list.</summary>
internal static class StepSection
{
    /// <summary>Adds the section.</summary>
    public static void Add(List<ReportBlock> blocks, IReadOnlyList<ProcedureStep> steps)
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
                Pitfalls(s),
            ])]));
    }

    private static string Pitfalls(ProcedureStep step) => (step.Pitfall, step.PredictedPitfall) switch
    {
        (null, null) => "-",
        (string known, null) => known,
        (null, string predicted) => $"PREDICTED: {predicted}",
        (string known, string predicted) => $"{known} PREDICTED: {predicted}",
    };

    private static string Evidence(ProcedureStep step)
    {
        string shown = step.ShowsIt.Count == 0 ? "-" : $"Shown by: {string.Join("; ", step.ShowsIt)}.";
        string missing = step.EvidenceAvailable ? string.Empty : " NONE OF THESE IS KNOWN TO BE ON HAND.";
        string hidden = step.CannotShowIt.Count == 0 ? string.Empty : $" Not shown: {string.Join("; ", step.CannotShowIt)}.";
        return shown + missing + hidden;
    }
}
