using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Html;
using Cavaxis.Reports.Pdf;
using Cavaxis.Reports.PlanReports;

namespace Cavaxis.Bench;

/// <summary>Reports of a finished plan.</summary>
internal static class ReportFigures
{
    /// <summary>Measures both formats.</summary>
    /// <param name="clock">The clock.</param>
    public static void Print(Clock clock)
    {
        RuleBook rules = RuleBookReader.BuiltIn;
        PlanningResult result = Planner.Plan(DemoCases.All[^1].Case, DeviceCatalogue.BuiltIn, rules, new PlanningOptions());
        FigureTable table = new("Reports, warm", "format", "wall ms", "MB allocated", "size kB");
        int size = 0;
        Timing html = clock.Measure(() => size = HtmlWriter.Write(Document()).Length);
        table.Add($"HTML", $"{html.WallMs:F1}", $"{html.AllocatedBytes / 1e6:F1}", $"{size / 1e3:F0}");
        Timing pdf = clock.Measure(() => size = PdfWriter.Write(Document(), DateTimeOffset.UnixEpoch).Length);
        table.Add($"PDF", $"{pdf.WallMs:F1}", $"{pdf.AllocatedBytes / 1e6:F1}", $"{size / 1e3:F0}");
        table.Print();

        ReportDocument Document() => PlanReport.Of(result, rules, DeviceCatalogue.BuiltIn);
    }
}
