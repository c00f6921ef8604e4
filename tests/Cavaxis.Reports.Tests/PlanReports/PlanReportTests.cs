using System.Text;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Html;
using Cavaxis.Reports.Pdf;
using Cavaxis.Reports.PlanReports;
using UglyToad.PdfPig;

namespace Cavaxis.Reports.Tests.PlanReports;

public class PlanReportTests
{
    private const string Tall = """
        {"cavaxisCase":1,"title":"Tall & <thin>","invented":true,"patient":{"ageYears":40,"sex":"male","heightCm":192,"weightKg":90},
         "support":{"goal":"gasExchange"},"obstacles":{"cavalFilter":"unknown"}}
        """;

    private const string Shock = """
        {"cavaxisCase":1,"title":"Shock","patient":{"ageYears":60,"sex":"female","heightCm":160,"weightKg":60},
         "support":{"goal":"circulation"},"heart":{"aorticRegurgitation":"severe"}}
        """;

    [Fact]
    public void Every_part_of_the_answer_stands_in_the_report()
    {
        ReportDocument report = Report(Tall, out PlanningResult result);
        string html = HtmlWriter.Write(report);
        Assert.Contains(result.Caution.Split(';')[0], html, StringComparison.Ordinal);
        Assert.Contains("Invented case", html, StringComparison.Ordinal);
        Assert.Contains("Tall &amp; &lt;thin&gt;", html, StringComparison.Ordinal);
        foreach (string heading in new[] { "Pressure and flow", "Which measurement would make this plan surer", "Steps", "What is missing, odd, or was not checked", "Numbers and sources" })
        {
            Assert.Contains(report.Blocks.OfType<Heading>(), block => block.Text == heading);
        }

        Assert.Equal(2, report.Blocks.OfType<Figure>().Count());
        Table plans = Assert.Single(report.Blocks.OfType<Table>(), table => table.Caption.StartsWith("All plans", StringComparison.Ordinal));
        Assert.Equal(result.Plans.Count, plans.Rows.Count);
        Assert.All(result.Missing, missing => Assert.Contains(missing.Field, html, StringComparison.Ordinal));
    }

    [Fact]
    public void A_stop_of_the_chosen_plan_is_called_out_before_the_drawing()
    {
        ReportDocument report = Report(Shock, out PlanningResult result);
        Assert.True(result.EveryPlanIsStopped);
        List<ReportBlock> blocks = [.. report.Blocks];
        int stop = blocks.FindIndex(block => block is Callout { Kind: CalloutKind.Stop });
        int figure = blocks.FindIndex(block => block is Figure);
        Assert.InRange(stop, 0, figure - 1);
    }

    [Fact]
    public void Nothing_in_the_report_is_called_harmless()
    {
        string html = HtmlWriter.Write(Report(Tall, out _));
        Assert.DoesNotMatch("(?i)\\bsafe(ly)?\\b", html);
    }

    [Fact]
    public void Every_chosen_plan_can_be_drawn_and_printed_with_the_caution_on_each_page()
    {
        PlanningResult first = Plan(Tall, 1);
        for (int rank = 1; rank <= first.Plans.Count; rank += 2)
        {
            PlanningResult result = Plan(Tall, rank);
            ReportDocument report = PlanReport.Of(result, RuleBookReader.BuiltIn, DeviceCatalogue.BuiltIn);
            using PdfDocument pdf = PdfDocument.Open(PdfWriter.Write(report, DateTimeOffset.UnixEpoch));
            Assert.All(pdf.GetPages(), page => Assert.Contains("not a certified medical device", Flat(page.Text), StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_same_plan_gives_the_same_bytes()
    {
        byte[] once = PdfWriter.Write(Report(Tall, out _), DateTimeOffset.UnixEpoch);
        byte[] again = PdfWriter.Write(Report(Tall, out _), DateTimeOffset.UnixEpoch);
        Assert.Equal(once, again);
    }

    private static string Flat(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static ReportDocument Report(string json, out PlanningResult result)
    {
        result = Plan(json, 1);
        return PlanReport.Of(result, RuleBookReader.BuiltIn, DeviceCatalogue.BuiltIn);
    }

    private static PlanningResult Plan(string json, int rank) => Planner.Plan(
        CaseFileReader.Read(Encoding.UTF8.GetBytes(json)),
        DeviceCatalogue.BuiltIn,
        RuleBookReader.BuiltIn,
        new PlanningOptions { Anatomies = 400, ChosenRank = rank });
}
