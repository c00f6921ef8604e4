using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary><c>people add</c>: someone new, with a first role and password.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the passwords.</param>
public sealed class PeopleAddCommand(CommandOutput output, SecretReader secrets) : PersonCommand<PeopleAddCommand.Settings>(output, secrets)
{
    /// <summary>What <c>people add</c> takes.</summary>
    public sealed class Settings : OnePersonSettings
    {
        /// <summary>Name for other people.</summary>
        [CommandOption("--name <NAME>")]
        [Description("Name by which others know them.")]
        public string? Name { get; init; }

        /// <summary>Programme of the role.</summary>
        [CommandOption("--programme <NAME>")]
        [Description("Programme of the role.")]
        public string? Programme { get; init; }

        /// <summary>The role.</summary>
        [CommandOption("--role <ROLE>")]
        [Description("reader, clinician, lead or administrator.")]
        public string? Role { get; init; }

        /// <summary>File with the first password.</summary>
        [CommandOption(PeoplePasswordCommand.NewPasswordOption + " <FILE>")]
        [Description("File of one line with their first password; without it you are asked.")]
        public string? NewPasswordFile { get; init; }
    }

    private protected override async Task DoAsync(RecordDesk desk, Settings settings)
    {
        desk.RequireSomewhere(Verb.KeepPeople, "people");
        Identifier programme = Identifier.Of(VerbText.Given(settings.Programme, "--programme"), "--programme");
        Role role = VerbText.RoleOf(VerbText.Given(settings.Role, "--role"));
        string password = Secrets.New(settings.NewPasswordFile, $"First password of {settings.PersonId}", PeoplePasswordCommand.NewPasswordOption);
        Refusal.Unless(await desk.People.RegisterAsync(desk.Person, settings.PersonId, settings.Name ?? settings.PersonId.Text, password, programme, role), settings.Person);
        VerbDone.Tell(Output, settings.Json, $"{settings.PersonId} is {CommandFault.CodeOf(role)} of {programme}. They should set a password of their own (`people password`).");
    }
}
