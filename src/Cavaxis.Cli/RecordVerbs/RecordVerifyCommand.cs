using System.ComponentModel;
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
/// <c>record verify</c>: every hash and every link. A record so damaged that no one can sign in is verified all the same: the answer tells nothing of any
/// patient, and whoever keeps a damaged record must learn where it is broken.
/// </summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class RecordVerifyCommand(CommandOutput output, SecretReader secrets) : AsyncCommand<RecordVerifyCommand.Settings>
{
    private static readonly StoreFaultCode[] TooDamaged = [StoreFaultCode.BrokenChain, StoreFaultCode.Damaged, StoreFaultCode.DiskFailed, StoreFaultCode.ReadOnly];

    /// <summary>What <c>record verify</c> takes.</summary>
    public sealed class Settings : PersonSettings
    {
        /// <summary>File with an anchor.</summary>
        [CommandOption("--anchor <FILE>")]
        [Description("File with a line of `record anchor`, kept elsewhere, that the record must pass.")]
        public string? Anchor { get; init; }

        /// <summary>Where the images lie.</summary>
        [CommandOption("--images <FOLDER>")]
        [Description(ImagesOption.Words)]
        public string? Images { get; init; }
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ChainAnchor? anchor = VerbText.AnchorIn(settings.Anchor);
        StoreAddress address = StoreOption.Existing(settings.Store);
        ImageStock? images = await RequireKeeperAsync(address, settings);
        ChainReport report = await StoreVerifier.VerifyAsync(address, anchor);
        RecordVerification told = RecordVerification.Of(report, anchor is not null, images);
        if (settings.Json)
        {
            output.Json(told);
        }
        else
        {
            told.Write(output);
        }

        return (int)(report.IsWhole && told.ImageTrouble.Count == 0 ? ExitCode.Done : ExitCode.StopFound);
    }

    /// <summary>The images, looked at one by one; null where the record is too damaged to sign in to and to say which it names.</summary>
    private async Task<ImageStock?> RequireKeeperAsync(StoreAddress address, Settings settings)
    {
        string name = RecordDesk.NameOf(settings);
        string password = RecordDesk.PasswordOf(settings, secrets);
        try
        {
            await using RecordDesk desk = await RecordDesk.SignInAsync(address, name, password);
            await desk.RequireKeeperAsync();
            return ImageStock.Of(await NamedImage.AllAsync(desk.Store), ImagesOption.Of(settings.Images, address));
        }
        catch (StoreFaultException damaged) when (TooDamaged.Contains(damaged.Fault.Code))
        {
            return null;
        }
    }
}
