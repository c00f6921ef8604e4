using System.ComponentModel;
using Cavaxis.Bedside.Packs;
using Cavaxis.Bedside.Sealing;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.PackVerbs;

/// <summary><c>pack accept</c>: takes an answer into the record of the patient whose pack it answers.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives password and passphrase.</param>
public sealed class PackAcceptCommand(CommandOutput output, SecretReader secrets) : PersonCommand<PackAcceptCommand.Settings>(output, secrets)
{
    /// <summary>What <c>pack accept</c> takes.</summary>
    public sealed class Settings : PersonSettings
    {
        /// <summary>The answer.</summary>
        [CommandArgument(0, "<FILE>")]
        [Description("The answer.")]
        public required string Path { get; init; }

        /// <summary>File with the passphrase.</summary>
        [CommandOption(PassphraseOption.Name + " <FILE>")]
        [Description(PassphraseOption.Words)]
        public string? PassphraseFile { get; init; }
    }

    private protected override async Task DoAsync(RecordDesk desk, Settings settings)
    {
        desk.RequireSomewhere(Verb.ShareForOpinion, "answer");
        byte[] file = InputFile.ReadAll(settings.Path, SealedFile.MostFile);
        RecordedEvent kept = await new PackDesk(desk.Store, desk.Person).AcceptAsync(file, PassphraseOption.Existing(Secrets, settings.PassphraseFile));
        if (settings.Json)
        {
            Output.Json(EventSheet.Of(kept));
        }
        else
        {
            Output.Wrapped(string.Empty, $"The answer is in the record of patient {kept.Stream.Id}, entry {kept.Sequence}. Whoever knows the passphrase could have written it: who answered is what the answer says of itself.");
        }
    }
}
