using System.Text;
using Cavaxis.Bedside.CourseFiles;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;

namespace Cavaxis.Cli.SheetVerbs;

/// <summary><c>patient fhir</c>: a FHIR R4 bundle of a patient's course.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class PatientFhirCommand(CommandOutput output, SecretReader secrets) : PersonCommand<ExportSettings>(output, secrets)
{
    private protected override async Task DoAsync(RecordDesk desk, ExportSettings settings)
    {
        string path = VerbText.Given(settings.To, "--to");
        CourseText made = Refusal.Granted(await new CourseSheets(desk.Patients, TimeProvider.System).FhirAsync(desk.Person, settings.Patient), settings.Patient);
        byte[] bytes = Encoding.UTF8.GetBytes(made.Text);
        InputFile.WriteWhole(path, bytes);
        SheetText.Tell(Output, settings.Json, new SheetWritten(path, bytes.Length, made.Count, made.Unread), "FHIR R4 bundle, with the patient's identifier");
    }
}
