using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Records.Access;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary><c>patient list</c>: the patients whose records one may read.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class PatientListCommand(CommandOutput output, SecretReader secrets) : PersonCommand<PersonSettings>(output, secrets)
{
    private protected override async Task DoAsync(RecordDesk desk, PersonSettings settings)
    {
        desk.RequireSomewhere(Verb.ReadPatient, "patients");
        string[] patients = [.. (await desk.Patients.ListAsync(desk.Person)).Select(static p => p.Text)];
        if (settings.Json)
        {
            Output.Json(patients);
            return;
        }

        foreach (string patient in patients)
        {
            Output.Line(patient);
        }
    }
}
