using System.Text;
using Cavaxis.Bedside.Exports;
using Cavaxis.Bedside.Programmes;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Patients;
using Cavaxis.Web.Downloads;
using Cavaxis.Web.Record;

namespace Cavaxis.Web.Host;

/// <summary>Files that a person made on a page, and the table of a programme. Who asks is looked up again at each fetch.</summary>
internal static class MadeFiles
{
    private const string Html = "text/html";

    /// <summary>Maps the addresses.</summary>
    public static void MapMade(this WebApplication app)
    {
        app.MapGet("/report/kept/{ticket}/{name}", (string ticket, string name, HttpContext context, FileTray tray, IPersonHere here) => AskedAsync(context, here, person => Task.FromResult(
            tray.Find(ticket, name, person.Id.Text) switch
            {
                null => Results.NotFound(),
                { ContentType: Html } page => Results.Bytes(page.Bytes, "text/html; charset=utf-8"),
                { ContentType: "image/png" } picture => Results.Bytes(picture.Bytes, "image/png"),
                TrayFile file => Results.File(file.Bytes, file.ContentType, file.Name),
            })));
        app.MapGet("/outcomes/{programme}/programme.csv", (string programme, HttpContext context, WorkspaceRecord record, IPersonHere here, CancellationToken given) =>
            AskedAsync(context, here, person => TableAsync(record, person, programme, given)));
    }

    private static async Task<IResult> TableAsync(WorkspaceRecord record, Person person, string programme, CancellationToken given)
    {
        PatientAnswer<ProgrammeReading> answer = await record.Programmes.ReadAsync(person, programme, null, given);
        byte[] mark = Encoding.UTF8.GetPreamble();
        return answer switch
        {
            { Value: ProgrammeReading reading } => Results.File(
                [.. mark, .. Encoding.UTF8.GetBytes(ProgrammeCsv.Write(reading.Courses.Select(static c => c.Row)))], "text/csv; charset=utf-8", "programme.csv"),
            { Decision: AccessDecision.NotAllowed } => Results.StatusCode(StatusCodes.Status403Forbidden),
            _ => Results.NotFound(),
        };
    }

    private static async Task<IResult> AskedAsync(HttpContext context, IPersonHere here, Func<Person, Task<IResult>> work)
    {
        // A name with a dot in the address does not make it a file of the program that may be kept.
        context.Response.Headers.CacheControl = "no-store";
        try
        {
            return await work(await here.NowAsync());
        }
        catch (InputFaultException)
        {
            // No longer signed in.
            return Results.StatusCode(StatusCodes.Status401Unauthorized);
        }
        catch (StoreFaultException refusal)
        {
            return Results.Text(refusal.Fault.ToString(), "text/plain", Encoding.UTF8, StatusCodes.Status503ServiceUnavailable);
        }
    }
}
