using System.Text;
using Cavaxis.Bedside.CourseFiles;
using Cavaxis.Records.Access;
using Cavaxis.Records.Patients;
using Cavaxis.Web.Record;

namespace Cavaxis.Web.Host;

/// <summary>Handover sheet, full report and FHIR bundle of a course as files to look at, print or send. Who asks is looked up again at each fetch, and every fetch stands in the audit.</summary>
internal static class SheetFiles
{
    /// <summary>Maps the addresses.</summary>
    public static void MapSheets(this WebApplication app)
    {
        app.MapGet("/report/course/{id}/handover.pdf", (string id, HttpContext context, WorkspaceRecord record, IPersonHere here) => FileAsync(context, here, person => Sheets(record).HandoverAsync(person, id), static f => Pdf(f, "handover.pdf")));
        app.MapGet("/report/course/{id}/handover.html", (string id, HttpContext context, WorkspaceRecord record, IPersonHere here) => FileAsync(context, here, person => Sheets(record).HandoverAsync(person, id), Page));
        app.MapGet("/report/course/{id}/course.pdf", (string id, HttpContext context, WorkspaceRecord record, IPersonHere here) => FileAsync(context, here, person => Sheets(record).ReportAsync(person, id), static f => Pdf(f, "course.pdf")));
        app.MapGet("/report/course/{id}/course.html", (string id, HttpContext context, WorkspaceRecord record, IPersonHere here) => FileAsync(context, here, person => Sheets(record).ReportAsync(person, id), Page));
        app.MapGet("/report/course/{id}/bundle.json", (string id, HttpContext context, WorkspaceRecord record, IPersonHere here) =>
            FileAsync(context, here, person => Sheets(record).FhirAsync(person, id), static t => Results.File(Encoding.UTF8.GetBytes(t.Text), "application/fhir+json", "bundle.json")));
    }

    private static CourseSheets Sheets(WorkspaceRecord record) => new(record.Patients, record.Clock);

    private static IResult Pdf(CourseFile file, string name) => Results.File(file.Pdf(), "application/pdf", name);

    private static IResult Page(CourseFile file) => Results.Bytes(file.Html(), "text/html; charset=utf-8");

    /// <summary>What is not granted and what is not there look the same, so that nobody learns which patients there are.</summary>
    private static Task<IResult> FileAsync<T>(HttpContext context, IPersonHere here, Func<Person, Task<PatientAnswer<T>>> made, Func<T, IResult> shown)
        where T : class =>
        MadeFiles.AskedAsync(context, here, async person => (await made(person)).Value is T file ? shown(file) : Results.NotFound());
}
