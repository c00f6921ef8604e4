using System.Globalization;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Reports.PlanReports;

/// <summary>All plans side by side, and which measurement would make the chosen one surer.</summary>
internal static class AlternativesSection
{
    /// <summary>Adds the section.</summary>
    public static void Add(List<ReportBlock> blocks, PlanningResult result)
    {
        blocks.Add(Alternatives(result));
        Next(blocks, result);
    }

    private static Table Alternatives(PlanningResult result)
    {
        bool tried = result.Plans.Any(static p => p.Insertion is not null);
        TableColumn[] goesIn = tried ? [new TableColumn("Goes in", ColumnAlign.Right, 4)] : [];
        return new Table(
            "All plans, best first; a plan with a stop comes after all plans without",
            [
                new TableColumn("Rank", ColumnAlign.Right, 2), new TableColumn("Plan", Weight: 7), new TableColumn("Fr", Weight: 5), new TableColumn("L/min", ColumnAlign.Right, 3),
                new TableColumn("Inlet mmHg", ColumnAlign.Right, 3), new TableColumn("Fit", ColumnAlign.Right, 3), .. goesIn, new TableColumn("SaO2", ColumnAlign.Right, 3),
                new TableColumn("DO2: VO2", ColumnAlign.Right, 3), new TableColumn("Score", ColumnAlign.Right, 3), new TableColumn("Findings", Weight: 4), new TableColumn("Pareto front", Weight: 3),
            ],
            [.. result.Plans.Select(p => (IReadOnlyList<string>)
            [
                p.Rank.ToString(CultureInfo.InvariantCulture),
                ConfigurationTable.Of(p.Configuration).ShortName,
                string.Join("/", p.Cannulae.Select(c => c.OuterDiameterFrench.ToString("F0", CultureInfo.InvariantCulture))),
                ReportNumber.Plain(p.Circuit.FlowLPerMin, "F1"),
                ReportNumber.Plain(p.Circuit.InletPressureMmHg.Value, "F0"),
                FormattableString.Invariant($"{p.ProbabilityAllPortsInZone * 100:F0} %"),
                .. tried ? [p.Insertion?.EveryCannulaRight is { } right ? FormattableString.Invariant($"{right.Value * 100:F0} % ({right.Low * 100:F0} to {right.High * 100:F0})") : "-"] : Array.Empty<string>(),
                FormattableString.Invariant($"{p.SaturationPercent().Value:F0} %"),
                ReportNumber.Plain(p.DeliveryToConsumption().Value, "F1"),
                ReportNumber.Plain(p.Score, "F2"),
                Grades(p),
                p.OnParetoFront ? "yes" : "no",
            ])]);
    }

    private static string Grades(CannulationPlan plan)
    {
        int stops = plan.CountOf(FindingGrade.Stop);
        int warnings = plan.CountOf(FindingGrade.Warning);
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
}
