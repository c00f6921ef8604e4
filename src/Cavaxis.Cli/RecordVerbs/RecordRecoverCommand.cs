using System.ComponentModel;
using Cavaxis.Bedside.Stores;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Chain;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Keeping;
using Cavaxis.Records.Passwords;
using Cavaxis.Records.People;
using Cavaxis.Records.Store;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>
/// <c>record recover</c>: what is intact of a damaged file goes into a new record. Passwords do not come along, so no one can be signed in: whoever may read the
/// damaged file may recover it, and only in the name of someone whom its intact part tells to be a keeper of the record; they get a new password.
/// </summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the new password.</param>
public sealed class RecordRecoverCommand(CommandOutput output, SecretReader secrets) : AsyncCommand<RecordRecoverCommand.Settings>
{
    /// <summary>What <c>record recover</c> takes.</summary>
    public sealed class Settings : PersonSettings
    {
        /// <summary>The damaged file.</summary>
        [CommandArgument(0, "<DAMAGED>")]
        [Description("The damaged file; it is not touched. The new record is made at --store.")]
        public required string Damaged { get; init; }

        /// <summary>File with an anchor.</summary>
        [CommandOption("--anchor <FILE>")]
        [Description("File with a line of `record anchor`, kept elsewhere: tells how many events there were.")]
        public string? Anchor { get; init; }
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ChainAnchor? anchor = VerbText.AnchorIn(settings.Anchor);
        Identifier name = Identifier.Of(RecordDesk.NameOf(settings), "--as");
        StoreAddress target = StoreOption.Address(settings.Store);
        if (target.Engine != StoreEngineKind.Sqlite)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.BadOption, "--store", "a database server", "the path of a new file", "Recover into a file, back it up, and restore the backup to the server."));
        }

        string password = secrets.New(settings.PasswordFile, $"New password of {name}", PersonSettings.PasswordFileOption);
        PasswordRule.Require(password, name.Text);
        RecoveryReport report = await StoreRecovery.RecoverAsync(settings.Damaged, target.Shown, anchor);
        if (!await TakeOverAsync(target, name, password))
        {
            // What was made for someone who may not have it does not stay.
            foreach (string left in new[] { target.Shown, target.Shown + "-wal", target.Shown + "-shm" })
            {
                File.Delete(left);
            }

            throw Refusal.NotAllowed("store");
        }

        RecordRecovery told = RecordRecovery.Of(report);
        if (settings.Json)
        {
            output.Json(told);
        }
        else
        {
            told.Write(output, target.Shown, name.Text);
        }

        return (int)(told.Whole ? ExitCode.Done : ExitCode.StopFound);
    }

    private static async Task<bool> TakeOverAsync(StoreAddress target, Identifier name, string password)
    {
        using EventStore store = await EventStore.OpenAsync(target, TimeProvider.System);
        PeopleRegister people = new(store, new Argon2PasswordHasher());
        return await people.FindAsync(name) is Person person
            && await StoreKeeping.DecideAsync(store, person) == AccessDecision.Granted
            && await people.SetPasswordAsync(person, person.Id, password) == PeopleOutcome.Done;
    }
}
