using System.ComponentModel;
using System.Globalization;
using System.Text;
using Cavaxis.Bedside.DeIdentification;
using Cavaxis.Bedside.Packs;
using Cavaxis.Bedside.Sealing;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Reports.Html;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.PackVerbs;

/// <summary><c>pack open</c>: reads a pack; needs no record and no account, and changes nothing.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the passphrase.</param>
public sealed class PackOpenCommand(CommandOutput output, SecretReader secrets) : Command<PackOpenCommand.Settings>
{
    /// <summary>What <c>pack open</c> takes.</summary>
    public sealed class Settings : CommandSettings
    {
        /// <summary>The pack.</summary>
        [CommandArgument(0, "<FILE>")]
        [Description("The pack.")]
        public required string Path { get; init; }

        /// <summary>HTML file.</summary>
        [CommandOption("--html <FILE>")]
        [Description("Write it as a page.")]
        public string? Html { get; init; }

        /// <summary>Folder for attachments.</summary>
        [CommandOption("--attachments <FOLDER>")]
        [Description("Write its attachments into this folder; nothing is overwritten.")]
        public string? Attachments { get; init; }

        /// <summary>File with the passphrase.</summary>
        [CommandOption(PassphraseOption.Name + " <FILE>")]
        [Description(PassphraseOption.Words)]
        public string? PassphraseFile { get; init; }

        /// <summary>JSON instead of words.</summary>
        [CommandOption("--json")]
        [Description("Print JSON.")]
        public bool Json { get; init; }
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        byte[] file = InputFile.ReadAll(settings.Path, SealedFile.MostFile);
        PackContents pack = PackFormat.ReadPack(file, PassphraseOption.Existing(secrets, settings.PassphraseFile));
        if (settings.Html is string html)
        {
            InputFile.WriteWhole(html, Encoding.UTF8.GetBytes(HtmlWriter.Write(PackReport.Of(pack))));
        }

        if (settings.Attachments is string folder)
        {
            foreach (PackAttachment attachment in pack.Attachments)
            {
                NewPackFile.Write(Path.Combine(folder, attachment.Name), attachment.Bytes);
            }
        }

        if (settings.Json)
        {
            output.Json(pack);
        }
        else
        {
            Tell(pack);
        }

        return (int)ExitCode.Done;
    }

    private void Tell(PackContents pack)
    {
        output.Wrapped("Asked: ", SafeText.Of(pack.Question));
        output.Line($"Pack {pack.PackId}; times from the start of support.");
        foreach (PackEntry entry in pack.Entries)
        {
            output.Wrapped(PackReport.TimeOf(entry.MinutesFromStart) + "  ", SafeText.Of($"{entry.Kind}  {PackReport.Words(entry.Payload)}"));
        }

        foreach (PackAttachment attachment in pack.Attachments)
        {
            output.Line(string.Create(CultureInfo.InvariantCulture, $"Attachment {attachment.Name}, {attachment.Bytes.Length} bytes (--attachments FOLDER writes it)"));
        }

        foreach (TakenOut taken in pack.TakenOut)
        {
            output.Wrapped("  taken out: ", SafeText.Of($"{taken.Place}: {taken.Why}"));
        }
    }
}
