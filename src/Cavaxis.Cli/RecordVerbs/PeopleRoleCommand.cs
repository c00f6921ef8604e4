using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary><c>people role</c>: gives a role in a programme, or ends it.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class PeopleRoleCommand(CommandOutput output, SecretReader secrets) : PersonCommand<PeopleRoleCommand.Settings>(output, secrets)
{
    private const string None = "none";

    /// <summary>What <c>people role</c> takes.</summary>
    public sealed class Settings : OnePersonSettings
    {
        /// <summary>Programme of the role.</summary>
        [CommandOption("--programme <NAME>")]
        [Description("Programme of the role.")]
        public string? Programme { get; init; }

        /// <summary>The role.</summary>
        [CommandOption("--role <ROLE>")]
        [Description("reader, clinician, lead, administrator, or none to end it.")]
        public string? Role { get; init; }
    }

    private protected override async Task DoAsync(RecordDesk desk, Settings settings)
    {
        desk.RequireSomewhere(Verb.KeepPeople, "people");
        Identifier programme = Identifier.Of(VerbText.Given(settings.Programme, "--programme"), "--programme");
        string role = VerbText.Given(settings.Role, "--role");
        bool ends = string.Equals(role, None, StringComparison.OrdinalIgnoreCase);
        Refusal.Unless(
            ends
                ? await desk.People.EndRoleAsync(desk.Person, settings.PersonId, programme)
                : await desk.People.GiveRoleAsync(desk.Person, settings.PersonId, programme, VerbText.RoleOf(role)),
            settings.Person);
        VerbDone.Tell(Output, settings.Json, ends ? $"{settings.PersonId} has no role in {programme} any more." : $"{settings.PersonId} is {CommandFault.CodeOf(VerbText.RoleOf(role))} of {programme}.");
    }
}
