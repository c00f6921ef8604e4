using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary><c>patient admit</c>: takes a new patient in; prints their identifier.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class PatientAdmitCommand(CommandOutput output, SecretReader secrets) : PersonCommand<ProgrammeSettings>(output, secrets)
{
    private protected override async Task DoAsync(RecordDesk desk, ProgrammeSettings settings)
    {
        Identifier programme = settings.ProgrammeId;
        PatientAnswer<Identifier> answer = await desk.Patients.AdmitAsync(desk.Person, programme);
        Refusal.Unless(answer.Decision, "programme", programme.Text);
        if (settings.Json)
        {
            Output.Json(new PatientAdmitted(answer.Value!.Text, programme.Text));
        }
        else
        {
            Output.Line(answer.Value!.Text);
        }
    }
}
