using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Records.Access;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary><c>people close</c>: closes someone out; they cannot sign in again, and what they wrote stays.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class PeopleCloseCommand(CommandOutput output, SecretReader secrets) : PersonCommand<OnePersonSettings>(output, secrets)
{
    private protected override async Task DoAsync(RecordDesk desk, OnePersonSettings settings)
    {
        desk.RequireSomewhere(Verb.KeepPeople, "people");
        Refusal.Unless(await desk.People.CloseOutAsync(desk.Person, settings.PersonId), settings.Person);
        VerbDone.Tell(Output, settings.Json, $"{settings.PersonId} is closed out and signed out everywhere.");
    }
}
