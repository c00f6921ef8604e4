using System.ComponentModel;
using Cavaxis.Bedside.Packs;
using Cavaxis.Bedside.Sealing;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.PackVerbs;

/// <summary><c>pack answer</c>: an answer to a pack, sealed with the same passphrase and bound to that pack; needs no record and no account.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the passphrase.</param>
public sealed class PackAnswerCommand(CommandOutput output, SecretReader secrets) : Command<PackAnswerCommand.Settings>
{
    /// <summary>What <c>pack answer</c> takes.</summary>
    public sealed class Settings : CommandSettings
    {
        /// <summary>The pack.</summary>
        [CommandArgument(0, "<FILE>")]
        [Description("The pack.")]
        public required string Path { get; init; }

        /// <summary>The answer.</summary>
        [CommandOption("--text <TEXT>")]
        [Description("The answer.")]
        public string? Text { get; init; }

        /// <summary>File with the answer.</summary>
        [CommandOption("--text-file <FILE>")]
        [Description("A text file with the answer instead.")]
        public string? TextFile { get; init; }

        /// <summary>Who answers.</summary>
        [CommandOption("--by <TEXT>")]
        [Description("Who answers, in your own words; may be left out.")]
        public string? By { get; init; }

        /// <summary>File of the answer.</summary>
        [CommandOption("--out <FILE>")]
        [Description("File of the answer; nothing may be there.")]
        public string? Out { get; init; }

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
        string text = VerbText.Given(settings.TextFile is string path ? CatalogueLoader.Text(path, 4 * PackFormat.LongestText) : settings.Text, "--text").Trim();
        string by = settings.By?.Trim() ?? string.Empty;
        string target = VerbText.Given(settings.Out, "--out");
        RefuseLonger(text, PackFormat.LongestText, "--text");
        RefuseLonger(by, PackFormat.LongestLine, "--by");
        byte[] file = InputFile.ReadAll(settings.Path, SealedFile.MostFile);
        string passphrase = PassphraseOption.Existing(secrets, settings.PassphraseFile);
        PackContents pack = PackFormat.ReadPack(file, passphrase);
        AnswerContents answer = new(PackFormat.AnswerName, PackFormat.Version, pack.PackId, SealedFile.HashOf(file), PackFormat.NewId(), text, by);
        NewPackFile.Write(target, PackFormat.Write(answer, passphrase));
        VerbDone.Tell(output, settings.Json, $"Answer to pack {pack.PackId} written. It opens with the passphrase of the pack.");
        return (int)ExitCode.Done;
    }

    private static void RefuseLonger(string text, int most, string option)
    {
        if (text.Length > most)
        {
            throw new InputFaultException(new InputFault(FaultCode.WrongLength, option, "too long", FormattableString.Invariant($"at most {most} characters"), "Shorten it."));
        }
    }
}
