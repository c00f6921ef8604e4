using System.Text.Json;
using Cavaxis.Bedside.Sealing;
using Cavaxis.Course.Events;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Patients;
using Cavaxis.Records.Store;

namespace Cavaxis.Bedside.Packs;

/// <summary>Packs out of the record and answers into it, for a person signed in.</summary>
/// <param name="store">The record.</param>
/// <param name="person">Who acts.</param>
public sealed class PackDesk(IEventStore store, Person person)
{
    private const int MostTries = 8;

    private static readonly EventKind Asked = EventKind.Of(CourseEventTable.Of<OpinionAsked>().Text);
    private static readonly EventKind Answered = EventKind.Of(CourseEventTable.Of<OpinionAnswered>().Text);

    private readonly PatientRecords patients = new(store);

    /// <summary>What a pack of a patient would hold; nothing is kept.</summary>
    /// <param name="patient">The patient as given.</param>
    /// <param name="question">What is asked.</param>
    /// <param name="attachments">Pictures and pages that the person has looked at.</param>
    /// <param name="confirmed">Codes of the free texts that the person confirmed.</param>
    /// <returns>The draft where it was granted.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">The question or an attachment cannot go along.</exception>
    /// <exception cref="StoreFaultException">The record cannot be read.</exception>
    public async Task<PatientAnswer<PackDraft>> DraftAsync(string patient, string question, IReadOnlyList<PackAttachment> attachments, IReadOnlySet<string> confirmed)
    {
        AccessDecision share = await patients.MayAsync(person, Verb.ShareForOpinion, patient);
        PatientAnswer<StreamReading> reading = await patients.ReadAsync(person, patient);
        AccessDecision decision = share < reading.Decision ? share : reading.Decision;
        if (decision != AccessDecision.Granted)
        {
            return new PatientAnswer<PackDraft>(decision, null, reading.AuditFault);
        }

        IReadOnlyList<string> names = [patient, .. await NamesAsync()];
        return new PatientAnswer<PackDraft>(
            decision, PackBuilder.Of(new PackSource(reading.Value!.Events, question, attachments, names, confirmed), PackFormat.NewId()), reading.AuditFault);
    }

    /// <summary>Writes down that a pack was given out.</summary>
    /// <param name="patient">The patient as given.</param>
    /// <param name="pack">The pack.</param>
    /// <param name="file">Its file.</param>
    /// <param name="askedOf">Whom, in words that name no one; null for nothing.</param>
    /// <returns>The decision.</returns>
    /// <exception cref="StoreFaultException">The record cannot be written.</exception>
    public async Task<AccessDecision> KeepAskedAsync(string patient, PackContents pack, ReadOnlyMemory<byte> file, string? askedOf)
    {
        ArgumentNullException.ThrowIfNull(pack);
        OpinionAsked asked = new() { Pack = pack.PackId, PackSha256 = SealedFile.HashOf(file.Span), Question = pack.Question, AskedOf = string.IsNullOrWhiteSpace(askedOf) ? null : askedOf.Trim() };
        return (await patients.WriteAsync(person, patient, null, new EventDraft(Asked, CanonicalJson.Of(CourseEventJson.Write(asked))))).Decision;
    }

    /// <summary>Takes an answer into the record of the patient whose pack it answers.</summary>
    /// <param name="file">The answer.</param>
    /// <param name="passphrase">The passphrase of the pack.</param>
    /// <returns>The event as kept.</returns>
    /// <exception cref="SealFaultException">It does not open, answers no pack of this person's patients, or is in the record already.</exception>
    /// <exception cref="StoreFaultException">The record cannot be read or written.</exception>
    public async Task<RecordedEvent> AcceptAsync(ReadOnlyMemory<byte> file, string passphrase)
    {
        (AnswerContents answer, string sha256) = PackFormat.ReadAnswer(file.Span, passphrase);
        IReadOnlyList<RecordedEvent> asked = (await store.ReadKindAsync(Asked)).Events;
        RecordedEvent? question = asked.FirstOrDefault(e => e.Stream.Area == PatientRecords.Area && Text(e, "pack") == answer.PackId && Text(e, "packSha256") == answer.PackSha256);
        string patient = question?.Stream.Id.Text ?? "none";
        AccessDecision decision = await patients.MayAsync(person, Verb.ShareForOpinion, patient);
        PatientAnswer<StreamReading> reading = await patients.ReadAsync(person, patient);
        if (question is null || decision != AccessDecision.Granted || reading.Value is null)
        {
            throw new SealFaultException(new SealFault(
                SealFaultCode.OtherPack, "an answer to no pack of your patients", "the answer to a pack that was made from this record", "Check which pack it answers; who made the pack can take it in."));
        }

        OpinionAnswered answered = new() { Pack = answer.PackId, Answer = answer.Answer, AnsweredBy = string.IsNullOrWhiteSpace(answer.AnsweredBy) ? null : answer.AnsweredBy.Trim(), AnswerSha256 = sha256 };
        EventDraft draft = new(Answered, CanonicalJson.Of(CourseEventJson.Write(answered)));
        IReadOnlyList<RecordedEvent> known = reading.Value.Events;
        long version = known.Count == 0 ? 0 : known[^1].Sequence;
        for (int i = 0; i < MostTries; i++)
        {
            // With the version, so that the same answer taken in twice at the same moment is seen by the second.
            RefuseKnown(known, sha256);
            switch ((await patients.WriteAsync(person, patient, version, draft)).Value)
            {
                case Appended kept:
                    return kept.Events[0];
                case AppendConflict conflict:
                    (known, version) = (conflict.Meanwhile, conflict.Version);
                    break;
            }
        }

        throw new StoreFaultException(new StoreFault(StoreFaultCode.Busy, "others write to this patient without end", "a moment of quiet", "Try again."));
    }

    private static void RefuseKnown(IEnumerable<RecordedEvent> events, string sha256)
    {
        if (events.Any(e => e.Kind == Answered && Text(e, "answerSha256") == sha256))
        {
            throw new SealFaultException(new SealFault(SealFaultCode.AnsweredAlready, "an answer that is in the record already", "a new answer", "Nothing was changed."));
        }
    }

    private static string? Text(RecordedEvent one, string field)
    {
        using JsonDocument payload = JsonDocument.Parse(one.Payload.Bytes);
        return payload.RootElement.TryGetProperty(field, out JsonElement value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
    }

    /// <summary>Names of people and programmes, which must stand in no text that leaves.</summary>
    private async Task<IReadOnlyList<string>> NamesAsync()
    {
        List<string> names = [];
        foreach (StreamName stream in await store.StreamsAsync(Person.Area))
        {
            if (Person.Of((await store.ReadAsync(new StreamQuery(stream))).Events) is Person one)
            {
                names.AddRange([one.Id.Text, one.Name, .. one.Roles.Keys]);
            }
        }

        return names;
    }
}
