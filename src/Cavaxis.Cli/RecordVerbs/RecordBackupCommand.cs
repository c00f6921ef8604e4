using System.ComponentModel;
using System.Globalization;
using Cavaxis.Bedside.ImageKeeping;
using Cavaxis.Bedside.Images;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Keeping;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary><c>record backup</c>: the whole record of one moment as one file, checked while it is written, and beside it the images that it names.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class RecordBackupCommand(CommandOutput output, SecretReader secrets) : AsyncCommand<RecordBackupCommand.Settings>
{
    /// <summary>What <c>record backup</c> takes.</summary>
    public sealed class Settings : PersonSettings
    {
        /// <summary>The backup.</summary>
        [CommandArgument(0, "<FILE>")]
        [Description("File of the backup; nothing may be there.")]
        public required string Path { get; init; }

        /// <summary>Where the images lie.</summary>
        [CommandOption("--images <FOLDER>")]
        [Description(ImagesOption.Words)]
        public string? Images { get; init; }
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        await using RecordDesk desk = await RecordDesk.SignInAsync(settings, secrets);
        await desk.RequireKeeperAsync();
        ImagesOption.RequireFree(settings.Path);
        StoreAddress store = StoreOption.Existing(settings.Store);
        RecordAnchor anchor = RecordAnchor.Of(await StoreBackup.BackUpAsync(store, settings.Path, TimeProvider.System));
        ImageStock images = ImageStock.Copy(await NamedImage.AllAsync(desk.Store), ImagesOption.Of(settings.Images, store), new ImageFolder(ImagesOption.OfBackup(settings.Path)));
        RecordCopy told = RecordCopy.Of(anchor, images);
        if (settings.Json)
        {
            output.Json(told);
        }
        else
        {
            told.Write(output, string.Create(CultureInfo.InvariantCulture, $"Backup of {anchor.Events} events written and checked. It is not encrypted: keep it where only keepers of the record reach it."));
        }

        return told.Code;
    }
}
