using Cavaxis.Bedside.CourseFiles;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;

namespace Cavaxis.Cli.SheetVerbs;

/// <summary><c>patient report</c>: the full report of a patient's course.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class PatientReportCommand(CommandOutput output, SecretReader secrets) : PersonCommand<SheetSettings>(output, secrets)
{
    private protected override async Task DoAsync(RecordDesk desk, SheetSettings settings)
    {
        SheetFile file = SheetFile.For(settings.Report);
        CourseFile made = Refusal.Granted(await new CourseSheets(desk.Patients, TimeProvider.System).ReportAsync(desk.Person, settings.Patient), settings.Patient);
        SheetText.Tell(Output, settings.Json, file.Write(made), "Full report");
    }
}
