using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary><c>patient audit</c>: who asked for the records of a programme's patients.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class PatientAuditCommand(CommandOutput output, SecretReader secrets) : PersonCommand<ProgrammeSettings>(output, secrets)
{
    private protected override async Task DoAsync(RecordDesk desk, ProgrammeSettings settings)
    {
        PatientAnswer<IReadOnlyList<RecordedEvent>> answer = await desk.Patients.AuditOfAsync(desk.Person, settings.ProgrammeId);
        Refusal.Unless(answer.Decision, "programme", settings.ProgrammeId.Text);
        EventText.Write(Output, settings.Json, answer.Value!, []);
    }
}
