using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Passwords;
using Cavaxis.Records.People;
using Cavaxis.Records.Store;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary><c>record create</c>: a new record with its first administrator.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the new password.</param>
public sealed class RecordCreateCommand(CommandOutput output, SecretReader secrets) : AsyncCommand<RecordCreateCommand.Settings>
{
    /// <summary>What <c>record create</c> takes.</summary>
    public sealed class Settings : PersonSettings
    {
        /// <summary>Name for other people.</summary>
        [CommandOption("--name <NAME>")]
        [Description("Name by which others know the first administrator.")]
        public string? Name { get; init; }

        /// <summary>First programme.</summary>
        [CommandOption("--programme <NAME>")]
        [Description("Name of the first programme.")]
        public string? Programme { get; init; }
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Identifier id = Identifier.Of(RecordDesk.NameOf(settings), "--as");
        Identifier programme = Identifier.Of(VerbText.Given(settings.Programme, "--programme"), "--programme");
        StoreAddress address = StoreOption.Address(settings.Store);
        string password = secrets.New(settings.PasswordFile, $"New password of {id}", PersonSettings.PasswordFileOption);
        PasswordRule.Require(password, id.Text);
        MakeFolder(address);
        using EventStore store = await EventStore.OpenAsync(address, TimeProvider.System);
        if (await new PeopleRegister(store, new Argon2PasswordHasher()).FoundAsync(id, settings.Name ?? id.Text, password, programme) != PeopleOutcome.Done)
        {
            throw new CommandFaultException(new CommandFault(
                "alreadyThere", "--store", InputFault.Shown(address.Shown), "a place without a record", "Sign in to the record that is there, or name another place."));
        }

        RecordAnchor anchor = RecordAnchor.Of(await store.AnchorAsync(cancellationToken));
        if (settings.Json)
        {
            output.Json(anchor);
        }
        else
        {
            output.Wrapped(string.Empty, $"Record made: {address.Shown}. {id} is administrator of {programme}.");
            output.Wrapped(string.Empty, "Print or keep this line elsewhere; it proves later that nothing before it was changed:");
            output.Line(anchor.Anchor);
        }

        return (int)ExitCode.Done;
    }

    private static void MakeFolder(StoreAddress address)
    {
        if (address.Engine != StoreEngineKind.Sqlite || Path.GetDirectoryName(Path.GetFullPath(address.Shown)) is not string folder || Directory.Exists(folder))
        {
            return;
        }

        try
        {
            if (OperatingSystem.IsWindows())
            {
                Directory.CreateDirectory(folder);
            }
            else
            {
                Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.UnreadableFile, "--store", InputFault.Shown(folder), "a folder that can be made", "Check the path and your rights."));
        }
    }
}
