using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Records.Access;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary><c>people unlock</c>: lets a name sign in again that was locked after failures.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class PeopleUnlockCommand(CommandOutput output, SecretReader secrets) : PersonCommand<OnePersonSettings>(output, secrets)
{
    private protected override async Task DoAsync(RecordDesk desk, OnePersonSettings settings)
    {
        desk.RequireSomewhere(Verb.KeepPeople, "people");
        Refusal.Unless(await desk.People.UnlockAsync(desk.Person, settings.PersonId), settings.Person);
        VerbDone.Tell(Output, settings.Json, $"{settings.PersonId} can sign in again.");
    }
}
