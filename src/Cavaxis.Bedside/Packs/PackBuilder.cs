using System.Globalization;
using Cavaxis.Bedside.DeIdentification;
using Cavaxis.Course.Events;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;

namespace Cavaxis.Bedside.Packs;

/// <summary>Makes a pack of a patient's events. Only what stands goes along: corrected values as corrected, nothing withdrawn, and no events about moving the patient or asking others.</summary>
public static class PackBuilder
{
    private static readonly string SupportStarted = CourseEventTable.Of<SupportStarted>().Text;

    private static readonly HashSet<string> LeftOut =
        [PatientRecords.Admitted.Text, PatientRecords.Transferred.Text, CourseEventTable.Of<OpinionAsked>().Text, CourseEventTable.Of<OpinionAnswered>().Text];

    /// <summary>Makes it.</summary>
    /// <param name="source">What it is made of.</param>
    /// <param name="packId">Identifier of chance.</param>
    /// <returns>The draft.</returns>
    /// <exception cref="InputFaultException">The question or a name of an attachment cannot go along.</exception>
    public static PackDraft Of(PackSource source, string packId)
    {
        ArgumentNullException.ThrowIfNull(source);
        KnownIdentity identity = new(source.Names);
        RefuseQuestion(source.Question, identity);
        foreach (PackAttachment attachment in source.Attachments.Where(static a => !PackFormat.IsAttachmentName(a.Name)))
        {
            throw new InputFaultException(new InputFault(
                FaultCode.BadOption, "attachment", InputFault.Shown(attachment.Name), "a name of small letters, digits and dashes that ends in .png or .pdf", "Rename the file."));
        }

        StandingEvent[] standing = [.. StandingEvent.Of(source.Events).Where(static e => !e.IsWithdrawn && !LeftOut.Contains(e.Now.Kind.Text))];
        DateTimeOffset start = StartOf(source.Events, standing);
        JsonCleaner cleaner = new(start, source.Confirmed, identity);
        List<PackEntry> entries = [];
        foreach (RecordedEvent one in standing.Select(static e => e.Now).OrderBy(static e => e.OccurredAt).ThenBy(static e => e.Sequence))
        {
            string place = string.Create(CultureInfo.InvariantCulture, $"entry {one.Sequence}");
            entries.Add(new PackEntry(one.Kind.Text, (long)Math.Floor((one.OccurredAt - start).TotalMinutes), cleaner.Clean(one.Payload.Bytes, place)));
        }

        PackAttachment[] attachments = [.. source.Attachments.Select(static a => a.Name.EndsWith(".png", StringComparison.Ordinal) ? a with { Bytes = PngPicture.Of(a.Bytes) } : a)];
        return new PackDraft(new PackContents(PackFormat.PackName, PackFormat.Version, packId, source.Question.Trim(), entries, attachments, cleaner.TakenOut), cleaner.FreeTexts);
    }

    /// <summary>Start of support; where it did not begin, the first event about the patient.</summary>
    private static DateTimeOffset StartOf(IReadOnlyList<RecordedEvent> events, StandingEvent[] standing) =>
        standing.FirstOrDefault(static e => e.Now.Kind.Text == SupportStarted)?.Now.OccurredAt ?? (events.Count > 0 ? events[0].OccurredAt : DateTimeOffset.UnixEpoch);

    private static void RefuseQuestion(string question, KnownIdentity identity)
    {
        ArgumentNullException.ThrowIfNull(question);
        if (string.IsNullOrWhiteSpace(question) || question.Length > PackFormat.LongestText)
        {
            throw new InputFaultException(new InputFault(FaultCode.WrongLength, "question", "nothing, or too much", "1 to 16000 characters", "Say what you want to know."));
        }

        if (identity.FoundIn(question) is string found)
        {
            throw new InputFaultException(new InputFault(FaultCode.Contradiction, "question", $"a text with {found}", "a question that names no one and no date", "Write it without; give times as hours of support."));
        }
    }
}
