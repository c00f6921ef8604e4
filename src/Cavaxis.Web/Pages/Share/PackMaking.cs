using System.Globalization;
using Cavaxis.Bedside.DeIdentification;
using Cavaxis.Bedside.Packs;
using Cavaxis.Bedside.Sealing;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Patients;
using Cavaxis.Web.Record;

namespace Cavaxis.Web.Pages.Share;

/// <summary>
/// A pack on its way out: what is asked, what goes along, what a person confirmed. It is sealed only as it was looked at last; where the record or the form has changed since,
/// it has to be looked at again. Passphrases go as soon as they were used.
/// </summary>
public sealed class PackMaking
{
    /// <summary>Most pictures and pages, as many as are read on the other side.</summary>
    internal const int MostAttachments = 20;

    /// <summary>Largest of them, bytes.</summary>
    internal const int MostAttachmentBytes = 16 * 1024 * 1024;

    /// <summary>All of them, bytes: in the pack they take a third more.</summary>
    internal const int MostAllBytes = 32 * 1024 * 1024;

    private readonly List<PackAttachment> attachments = [];
    private readonly List<string> givenNames = [];
    private readonly HashSet<string> confirmed = new(StringComparer.Ordinal);
    private string? lookedAt;
    private int handedIn;

    internal string Question { get; set; } = string.Empty;

    internal string AskedOf { get; set; } = string.Empty;

    internal string Passphrase { get; set; } = string.Empty;

    internal string Again { get; set; } = string.Empty;

    internal bool AttachmentsSeen { get; set; }

    /// <summary>What would go along, as looked at last; null before.</summary>
    internal PackDraft? Draft { get; private set; }

    /// <summary>Pictures and pages, with the names that they were handed in under; those stay here.</summary>
    internal IEnumerable<(PackAttachment Attachment, string Given)> Attachments => attachments.Zip(givenNames);

    /// <summary>True where what is seen is what would be sealed.</summary>
    internal bool IsCurrent => Draft is not null && lookedAt == Form();

    internal bool IsConfirmed(FreeText text) => confirmed.Contains(text.Code);

    internal void Confirm(FreeText text, bool goes) => _ = goes ? confirmed.Add(text.Code) : confirmed.Remove(text.Code);

    /// <summary>Adds a picture or page. Its own name may name someone, so it gets a number instead.</summary>
    internal void Attach(string given, byte[] bytes)
    {
        string ending = bytes.AsSpan().StartsWith("%PDF-"u8) ? "pdf" : bytes.AsSpan().StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G']) ? "png" : string.Empty;
        InputFault? fault = ending.Length == 0 ? new InputFault(FaultCode.WrongKind, "attachment", InputFault.Shown(given), "a PNG picture or a PDF page", "Export it as PNG or PDF, or leave it out.")
            : attachments.Count == MostAttachments ? new InputFault(FaultCode.WrongLength, "attachment", "too many", "at most 20", "Leave some out.")
            : attachments.Sum(static a => (long)a.Bytes.Length) + bytes.Length > MostAllBytes ? new InputFault(FaultCode.FileTooLarge, "attachment", "more than 32 MiB together", "at most 32 MiB together", "Leave some out, or make them smaller.")
            : null;
        if (fault is not null)
        {
            throw new InputFaultException(fault);
        }

        attachments.Add(new PackAttachment(string.Create(CultureInfo.InvariantCulture, $"extract-{++handedIn}.{ending}"), bytes));
        givenNames.Add(given);
        AttachmentsSeen = false;
    }

    internal void LeaveOut(PackAttachment attachment)
    {
        int at = attachments.IndexOf(attachment);
        attachments.RemoveAt(at);
        givenNames.RemoveAt(at);
    }

    /// <summary>Looks at what would go along.</summary>
    internal async Task LookAsync(PackDesk packs, string patient)
    {
        string form = Form();
        Draft = await DraftAsync(packs, patient);
        lookedAt = form;
    }

    /// <summary>Seals it as it was looked at, and writes down that it was asked.</summary>
    /// <returns>The file.</returns>
    internal async Task<byte[]> SealAsync(PackDesk packs, string patient, SealTurn turn)
    {
        string passphrase = PassphraseRule.Require(Passphrase);
        if (passphrase != Again.Trim(' '))
        {
            throw new InputFaultException(new InputFault(FaultCode.Contradiction, "passphrase", "two that differ", "the same passphrase twice", "Type both again."));
        }

        if (attachments.Count > 0 && !AttachmentsSeen)
        {
            throw new InputFaultException(new InputFault(FaultCode.MissingField, "attachments", "not looked at", "a person who looked at each", "Look at every picture and page, and say so above."));
        }

        PackDraft seen = Draft ?? throw Changed();
        PackDraft now = await DraftAsync(packs, patient);
        if (!IsCurrent || !Same(seen, now))
        {
            (Draft, lookedAt) = (now, null);
            throw Changed();
        }

        byte[] file = await turn.DoAsync(() => Task.FromResult(PackFormat.Write(now.Contents, passphrase)));
        AccessDecision decision = await packs.KeepAskedAsync(patient, now.Contents, file, AskedOf);
        if (decision != AccessDecision.Granted)
        {
            // An answer to a pack that the record does not know could not be taken in, so the pack is not given out.
            throw RecordFault.Of(decision, patient);
        }

        Forget();
        return file;
    }

    /// <summary>Empties the form, the passphrases first of all.</summary>
    internal void Forget()
    {
        (Passphrase, Again, Question, AskedOf, Draft, lookedAt, AttachmentsSeen) = (string.Empty, string.Empty, string.Empty, string.Empty, null, null, false);
        attachments.Clear();
        givenNames.Clear();
        confirmed.Clear();
    }

    private static InputFaultException Changed() => new(new InputFault(
        FaultCode.Contradiction, "pack", "changed since it was looked at", "a pack as it was looked at", "Look again at what goes along, then seal it."));

    private static bool Same(PackDraft one, PackDraft other) =>
        one.Contents.Entries.Count == other.Contents.Entries.Count && one.Contents.TakenOut.SequenceEqual(other.Contents.TakenOut) && one.FreeTexts.SequenceEqual(other.FreeTexts)
        && one.Contents.Entries.Zip(other.Contents.Entries).All(static p => p.First.Kind == p.Second.Kind && p.First.MinutesFromStart == p.Second.MinutesFromStart && System.Text.Json.Nodes.JsonNode.DeepEquals(p.First.Payload, p.Second.Payload));

    private async Task<PackDraft> DraftAsync(PackDesk packs, string patient)
    {
        PatientAnswer<PackDraft> answer = await packs.DraftAsync(patient, Question, [.. attachments], confirmed);
        return answer.Value ?? throw RecordFault.Of(answer.Decision, patient);
    }

    private string Form() => string.Join('\n', [Question.Trim(), .. confirmed.Order(StringComparer.Ordinal), .. attachments.Select(static a => a.Name)]);
}
