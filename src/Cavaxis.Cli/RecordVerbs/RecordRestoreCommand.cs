using System.ComponentModel;
using System.Globalization;
using Cavaxis.Bedside.ImageKeeping;
using Cavaxis.Bedside.Images;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Records.Chain;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Keeping;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>
/// <c>record restore</c>: a backup becomes a record, in a file or on a server; so it is also the way from one to the other. Who acts signs in to the people
/// of the backup, on a copy that is thrown away, so that the restored record is the backup and nothing else. Images beside the backup come back beside the record.
/// </summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class RecordRestoreCommand(CommandOutput output, SecretReader secrets) : AsyncCommand<RecordRestoreCommand.Settings>
{
    /// <summary>What <c>record restore</c> takes.</summary>
    public sealed class Settings : PersonSettings
    {
        /// <summary>The backup.</summary>
        [CommandArgument(0, "<FILE>")]
        [Description("The backup. It is restored to --store, where nothing may be yet.")]
        public required string Path { get; init; }

        /// <summary>File with an anchor.</summary>
        [CommandOption("--anchor <FILE>")]
        [Description("File with a line of `record anchor`, kept elsewhere, that the backup must pass.")]
        public string? Anchor { get; init; }

        /// <summary>Where the images shall lie.</summary>
        [CommandOption("--images <FOLDER>")]
        [Description(ImagesOption.Words)]
        public string? Images { get; init; }
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ChainAnchor? anchor = VerbText.AnchorIn(settings.Anchor);
        StoreAddress target = StoreOption.Address(settings.Store);
        string name = RecordDesk.NameOf(settings);
        string password = RecordDesk.PasswordOf(settings, secrets);
        IReadOnlyList<NamedImage> named = await RequireKeeperAsync(settings.Path, name, password);
        ChainHead head = await StoreBackup.RestoreAsync(settings.Path, target, anchor);
        ImageStock images = ImageStock.Copy(named, new ImageFolder(ImagesOption.OfBackup(settings.Path)), ImagesOption.Of(settings.Images, target));
        RecordCopy told = RecordCopy.Of(RecordAnchor.Of(new ChainAnchor(head, TimeProvider.System.GetUtcNow())), images);
        if (settings.Json)
        {
            output.Json(told);
        }
        else
        {
            told.Write(output, string.Create(CultureInfo.InvariantCulture, $"{told.Events} events restored to {target.Shown}; the chain holds. People sign in as before."));
        }

        return told.Code;
    }

    private static async Task<IReadOnlyList<NamedImage>> RequireKeeperAsync(string backup, string name, string password)
    {
        if (!File.Exists(backup))
        {
            throw new StoreFaultException(new StoreFault(StoreFaultCode.CannotOpen, "there is no such file", "a backup", "Check the path."));
        }

        DirectoryInfo folder = Directory.CreateTempSubdirectory("cavaxis-restore-");
        try
        {
            string copy = Path.Combine(folder.FullName, "copy.db");
            File.Copy(backup, copy);
            await using RecordDesk desk = await RecordDesk.SignInAsync(StoreAddress.Of(copy), name, password);
            await desk.RequireKeeperAsync();
            return await NamedImage.AllAsync(desk.Store);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StoreFaultException(new StoreFault(StoreFaultCode.CannotOpen, "the backup cannot be read or copied", "a readable file, and room for a copy of it", "Check rights and disk."), e);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
