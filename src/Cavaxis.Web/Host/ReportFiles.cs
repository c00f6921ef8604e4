using System.Text;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Html;
using Cavaxis.Reports.Pdf;
using Cavaxis.Reports.PlanReports;
using Cavaxis.Web.CaseTexts;
using Cavaxis.Web.Desk;
using Cavaxis.Web.Help;
using Cavaxis.Web.Pages.GoesIn;
using Cavaxis.Web.Shelf;

namespace Cavaxis.Web.Host;

/// <summary>Report and case file of a saved version as files to look at, print or keep.</summary>
internal static class ReportFiles
{
    /// <summary>The report carries no time of day, so that the same plan gives the same bytes.</summary>
    private static readonly DateTimeOffset NoTime = DateTimeOffset.UnixEpoch;

    /// <summary>Maps the addresses.</summary>
    public static void MapReports(this WebApplication app)
    {
        app.MapGet("/report/{id}/{number:long}/{rank:int}/plan.html", (string id, long number, int rank, ICaseShelf shelf, PlanRunner runner, IInsertionSource insertions, CancellationToken given) =>
            ReportAsync(id, number, rank, shelf, runner, insertions, document => Results.Text(HtmlWriter.Write(document), "text/html", Encoding.UTF8), given));
        app.MapGet("/report/{id}/{number:long}/{rank:int}/plan.pdf", (string id, long number, int rank, ICaseShelf shelf, PlanRunner runner, IInsertionSource insertions, CancellationToken given) =>
            ReportAsync(id, number, rank, shelf, runner, insertions, document => Results.File(PdfWriter.Write(document, NoTime), "application/pdf", "plan.pdf"), given));
        app.MapGet("/report/{id}/{number:long}/case.json", CaseAsync);
        app.MapGet("/models/{page}", static (string page) => HelpText.Model(page) is string text ? Results.Text(text, "text/plain", Encoding.UTF8) : Results.NotFound());
    }

    private static async Task<IResult> CaseAsync(string id, long number, ICaseShelf shelf) => await shelf.ReadAsync(id, number) is CaseVersion version
        ? Results.File(Encoding.UTF8.GetBytes(version.Json), "application/json", "case.json")
        : Results.NotFound();

    private static async Task<IResult> ReportAsync(
        string id, long number, int rank, ICaseShelf shelf, PlanRunner runner, IInsertionSource insertions, Func<ReportDocument, IResult> written, CancellationToken given)
    {
        if (await shelf.ReadAsync(id, number) is not CaseVersion version || CaseCheck.Of(version.Json).Case is not CaseFile file)
        {
            return Results.NotFound();
        }

        PlanningResult result = await runner.PlanAsync(file, version.Json, rank, circulation: true, given);
        if (result.Plans.Count > 0 && insertions.LatestOf(version.Json, result.Plans[result.ChosenPlan - 1]) is InsertionResult study)
        {
            return written(PlanReport.Of(PlanInsertions.With(result, study).Planning, runner.Rules, runner.Catalogue, study));
        }

        return written(PlanReport.Of(result, runner.Rules, runner.Catalogue));
    }
}
