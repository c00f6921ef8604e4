using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary><c>people password</c>: sets one's own password, or that of someone whose programme one keeps.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the passwords.</param>
public sealed class PeoplePasswordCommand(CommandOutput output, SecretReader secrets) : PersonCommand<PeoplePasswordCommand.Settings>(output, secrets)
{
    /// <summary>Name of the option of the new password's file.</summary>
    internal const string NewPasswordOption = "--new-password-file";

    /// <summary>What <c>people password</c> takes.</summary>
    public sealed class Settings : OnePersonSettings
    {
        /// <summary>File with the new password.</summary>
        [CommandOption(NewPasswordOption + " <FILE>")]
        [Description("File of one line with the new password; without it you are asked.")]
        public string? NewPasswordFile { get; init; }
    }

    private protected override async Task DoAsync(RecordDesk desk, Settings settings)
    {
        string password = Secrets.New(settings.NewPasswordFile, $"New password of {settings.PersonId}", NewPasswordOption);
        Refusal.Unless(await desk.People.SetPasswordAsync(desk.Person, settings.PersonId, password), settings.Person);
        VerbDone.Tell(Output, settings.Json, $"{settings.PersonId} has a new password and is signed out everywhere.");
    }
}
