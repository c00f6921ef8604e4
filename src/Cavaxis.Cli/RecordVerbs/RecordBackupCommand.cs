using System.ComponentModel;
using System.Globalization;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Records.Keeping;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary><c>record backup</c>: the whole record of one moment as one file, checked while it is written.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class RecordBackupCommand(CommandOutput output, SecretReader secrets) : PersonCommand<RecordBackupCommand.Settings>(output, secrets)
{
    /// <summary>What <c>record backup</c> takes.</summary>
    public sealed class Settings : PersonSettings
    {
        /// <summary>The backup.</summary>
        [CommandArgument(0, "<FILE>")]
        [Description("File of the backup; nothing may be there.")]
        public required string Path { get; init; }
    }

    private protected override async Task DoAsync(RecordDesk desk, Settings settings)
    {
        await desk.RequireKeeperAsync();
        RecordAnchor anchor = RecordAnchor.Of(await StoreBackup.BackUpAsync(StoreOption.Existing(settings.Store), settings.Path, TimeProvider.System));
        if (settings.Json)
        {
            Output.Json(anchor);
            return;
        }

        Output.Wrapped(string.Empty, string.Create(CultureInfo.InvariantCulture, $"Backup of {anchor.Events} events written and checked. It is not encrypted: keep it where only keepers of the record reach it."));
        Output.Line(anchor.Anchor);
    }
}
