using System.ComponentModel;
using System.Globalization;
using Cavaxis.Bedside.DeIdentification;
using Cavaxis.Bedside.Packs;
using Cavaxis.Bedside.Sealing;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Patients;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.PackVerbs;

/// <summary><c>pack make</c>: a de-identified, sealed file of a patient's course. Without <c>--out</c> it shows what would go along and what a person has to look at.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives password and passphrase.</param>
public sealed class PackMakeCommand(CommandOutput output, SecretReader secrets) : PersonCommand<PackMakeCommand.Settings>(output, secrets)
{
    private const int MostAttachment = 16 * 1024 * 1024;

    /// <summary>What <c>pack make</c> takes.</summary>
    public sealed class Settings : OnePatientSettings
    {
        /// <summary>The question.</summary>
        [CommandOption("--question <TEXT>")]
        [Description("What you want to know, naming no one and no date.")]
        public string? Question { get; init; }

        /// <summary>Whom.</summary>
        [CommandOption("--asked-of <TEXT>")]
        [Description("Whom you ask, for your own record.")]
        public string? AskedOf { get; init; }

        /// <summary>The pack.</summary>
        [CommandOption("--out <FILE>")]
        [Description("File of the pack; nothing may be there. Left out: show what would go along.")]
        public string? Out { get; init; }

        /// <summary>Confirmed texts.</summary>
        [CommandOption("--confirm <CODE>")]
        [Description("Code of a free text that you have read and that names no one; may be given several times.")]
        public string[] Confirm { get; init; } = [];

        /// <summary>Attachments.</summary>
        [CommandOption("--attach <FILE>")]
        [Description("A PNG or PDF that you have looked at and that names no one; may be given several times.")]
        public string[] Attach { get; init; } = [];

        /// <summary>File with the passphrase.</summary>
        [CommandOption(PassphraseOption.Name + " <FILE>")]
        [Description(PassphraseOption.Words)]
        public string? PassphraseFile { get; init; }
    }

    private protected override async Task DoAsync(RecordDesk desk, Settings settings)
    {
        PackDesk packs = new(desk.Store, desk.Person);
        Refusal.Unless(await desk.Patients.MayAsync(desk.Person, Verb.ShareForOpinion, settings.Patient), "patient", settings.Patient);
        string question = VerbText.Given(settings.Question, "--question");
        PackAttachment[] attachments = [.. settings.Attach.Select(static p => new PackAttachment(Path.GetFileName(p), InputFile.ReadAll(p, MostAttachment)))];
        PatientAnswer<PackDraft> answer = await packs.DraftAsync(settings.Patient, question, attachments, settings.Confirm.ToHashSet(StringComparer.Ordinal));
        PackDraft draft = Refusal.Granted(answer, settings.Patient);
        RefuseUnknown(settings.Confirm, draft);
        if (settings.Out is not string path)
        {
            Tell(settings, PackMade.Of(draft, null));
            return;
        }

        byte[] file = PackFormat.Write(draft.Contents, PassphraseOption.New(Secrets, settings.PassphraseFile));
        NewPackFile.Write(path, file);
        try
        {
            Refusal.Unless(await packs.KeepAskedAsync(settings.Patient, draft.Contents, file, settings.AskedOf), "patient", settings.Patient);
        }
        catch
        {
            // An answer to a pack that the record does not know could not be taken in.
            File.Delete(path);
            throw;
        }

        Tell(settings, PackMade.Of(draft, SealedFile.HashOf(file)));
    }

    private static void RefuseUnknown(string[] confirmed, PackDraft draft)
    {
        if (confirmed.FirstOrDefault(code => draft.FreeTexts.All(t => t.Code != code)) is string unknown)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.NotFound, "--confirm", InputFault.Shown(unknown), "a code that `pack make` without --out prints", "The text was changed since, or the code mistyped: look again."));
        }
    }

    private void Tell(Settings settings, PackMade made)
    {
        if (settings.Json)
        {
            Output.Json(made);
            return;
        }

        Output.Line(made.PackSha256 is null ? "Nothing was written. This would go along:" : $"Pack {made.PackId} written. Tell the passphrase over the telephone, not beside the file.");
        Output.Wrapped(string.Empty, string.Create(CultureInfo.InvariantCulture, $"{made.Entries} entries, {made.Attachments} attachments; {made.TakenOut.Count} taken out or made coarser."));
        foreach (TakenOut taken in made.TakenOut)
        {
            Output.Wrapped("  out: ", $"{taken.Place}: {taken.Why}");
        }

        foreach (FreeText text in made.FreeTexts)
        {
            Output.Wrapped(string.Empty, $"{(settings.Confirm.Contains(text.Code) ? "confirmed" : "NOT CONFIRMED, left out")} {text.Code} {text.Place}: {SafeText.Of(text.Text)}");
        }
    }
}
