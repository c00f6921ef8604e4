using System.Security.Cryptography;
using System.Text.Json;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Store;

namespace Cavaxis.Records.Patients;

/// <summary>
/// The records of patients as a person may see them. Each patient belongs to one programme; whoever has no role in it gets the same
/// answer, by the same steps, as for a patient that does not exist. Every question is kept in the audit.
/// </summary>
/// <param name="store">Where all is kept.</param>
public sealed class PatientRecords(IEventStore store)
{
    /// <summary>Area of the streams of patients.</summary>
    public const string Area = "patient";

    /// <summary>A patient was taken in: <c>{"programme"}</c>; the first event of every patient.</summary>
    public static EventKind Admitted { get; } = EventKind.Of("patient.admitted");

    /// <summary>A patient was given over to another programme: <c>{"programme"}</c>.</summary>
    public static EventKind Transferred { get; } = EventKind.Of("patient.transferred");

    /// <summary>An identifier for a new patient: 128 bits of chance, which no one guesses.</summary>
    /// <returns>The identifier.</returns>
    public static Identifier NewId() => Identifier.Of(Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16)));

    /// <summary>Takes a new patient in.</summary>
    /// <param name="person">Who asks.</param>
    /// <param name="programme">Programme of the patient.</param>
    /// <param name="first">What is written down with the admission, all or none; may be nothing.</param>
    /// <returns>The patient's identifier: 128 bits of chance, which no one guesses.</returns>
    /// <exception cref="InputFaultException">A draft would admit or transfer a patient.</exception>
    /// <exception cref="StoreFaultException">The store cannot be written.</exception>
    public async Task<PatientAnswer<Identifier>> AdmitAsync(Person person, Identifier programme, params IReadOnlyList<EventDraft> first)
    {
        PatientAnswer<Admission> answer = await AdmitWithAsync(person, programme, first);
        return new PatientAnswer<Identifier>(answer.Decision, answer.Value?.Patient);
    }

    /// <summary>Takes a new patient in, as <see cref="AdmitAsync"/>, and gives what was kept.</summary>
    /// <param name="person">Who asks.</param>
    /// <param name="programme">Programme of the patient.</param>
    /// <param name="first">What is written down with the admission, all or none.</param>
    /// <returns>The patient and the events as kept.</returns>
    /// <exception cref="InputFaultException">A draft would admit or transfer a patient.</exception>
    /// <exception cref="StoreFaultException">The store cannot be written.</exception>
    public async Task<PatientAnswer<Admission>> AdmitWithAsync(Person person, Identifier programme, IReadOnlyList<EventDraft> first)
    {
        ArgumentNullException.ThrowIfNull(programme);
        RefuseMoves(first);
        AccessDecision decision = AccessRule.Decide(person, Verb.AdmitPatient, programme);
        if (decision != AccessDecision.Granted)
        {
            return new PatientAnswer<Admission>(decision);
        }

        Identifier id = NewId();
        AppendOutcome kept = await store.AppendAsync(new AppendRequest(StreamOf(id), 0, person.Id, [Audit.Draft(Admitted, ("programme", programme.Text)), .. first]));
        return new PatientAnswer<Admission>(decision, new Admission(id, kept));
    }

    /// <summary>May a person do something with a patient? Asks the store the same questions whether or not there is such a patient, and gives nothing of the record.</summary>
    /// <param name="person">Who asks.</param>
    /// <param name="verb">What is to be done.</param>
    /// <param name="patient">The patient's identifier as it was given, whatever it is.</param>
    /// <returns>The decision.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public async Task<AccessDecision> MayAsync(Person person, Verb verb, string patient) => (await DecideAsync(person, verb, patient)).Decision;

    /// <summary>Reads a patient's record.</summary>
    /// <param name="person">Who asks.</param>
    /// <param name="patient">The patient's identifier as it was given, whatever it is.</param>
    /// <param name="kind">Only this kind; null for all.</param>
    /// <param name="from">Only what happened then or later; null for no bound.</param>
    /// <param name="before">Only what happened earlier; null for no bound.</param>
    /// <returns>The events where it was granted.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public Task<PatientAnswer<StreamReading>> ReadAsync(
        Person person, string patient, EventKind? kind = null, DateTimeOffset? from = null, DateTimeOffset? before = null) =>
        ReadPartsAsync(person, patient, stream => [new StreamQuery(stream, 0, kind, from, before)]);

    /// <summary>Reads parts of a patient's events, as one reading in the audit.</summary>
    /// <param name="person">Who asks.</param>
    /// <param name="patient">The patient's identifier as it was given.</param>
    /// <param name="parts">What is asked of the stream of the patient; an event that is in two parts comes once.</param>
    /// <returns>The events, where it was granted, in the order in which they were written down.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public async Task<PatientAnswer<StreamReading>> ReadPartsAsync(Person person, string patient, Func<StreamName, IReadOnlyList<StreamQuery>> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(person);
        (AccessDecision decision, StreamName stream, Identifier? programme) = await DecideAsync(person, Verb.ReadPatient, patient);
        StoreFault? unkept = await AuditAsync(person, patient, decision, programme);
        return decision == AccessDecision.Granted
            ? new PatientAnswer<StreamReading>(decision, await TogetherAsync(parts(stream)), unkept)
            : new PatientAnswer<StreamReading>(decision, null, unkept);
    }

    /// <summary>Writes to a patient's record.</summary>
    /// <param name="person">Who writes.</param>
    /// <param name="patient">The patient's identifier as it was given.</param>
    /// <param name="expected">Number of events that the writer knew of; null where it does not matter.</param>
    /// <param name="drafts">The events. Corrections need the right to correct; none may move the patient.</param>
    /// <returns>What became of it where it was granted.</returns>
    /// <exception cref="InputFaultException">A draft would admit or transfer a patient, or corrects what is not there.</exception>
    /// <exception cref="StoreFaultException">The store cannot be written.</exception>
    public async Task<PatientAnswer<AppendOutcome>> WriteAsync(Person person, string patient, long? expected, params IReadOnlyList<EventDraft> drafts)
    {
        ArgumentNullException.ThrowIfNull(person);
        RefuseMoves(drafts);
        AccessDecision decision = AccessDecision.Granted;
        StreamName? stream = null;
        foreach (Verb verb in drafts.Select(static d => d.Corrects is null ? Verb.Record : Verb.Correct).DefaultIfEmpty(Verb.Record).Distinct())
        {
            (AccessDecision one, stream, _) = await DecideAsync(person, verb, patient);
            decision = one < decision ? one : decision;
        }

        return decision == AccessDecision.Granted
            ? new PatientAnswer<AppendOutcome>(decision, await store.AppendAsync(new AppendRequest(stream!, expected, person.Id, drafts)))
            : new PatientAnswer<AppendOutcome>(decision);
    }

    /// <summary>Gives a patient over to another programme, whose people see the whole record from then on.</summary>
    /// <param name="person">Who asks.</param>
    /// <param name="patient">The patient's identifier as it was given.</param>
    /// <param name="programme">The other programme.</param>
    /// <returns>What became of it where it was granted.</returns>
    /// <exception cref="StoreFaultException">The store cannot be written.</exception>
    public async Task<PatientAnswer<AppendOutcome>> TransferAsync(Person person, string patient, Identifier programme)
    {
        ArgumentNullException.ThrowIfNull(person);
        ArgumentNullException.ThrowIfNull(programme);
        (AccessDecision decision, StreamName stream, _) = await DecideAsync(person, Verb.TransferPatient, patient);
        return decision == AccessDecision.Granted
            ? new PatientAnswer<AppendOutcome>(decision, await store.AppendAsync(new AppendRequest(stream, null, person.Id, Audit.Draft(Transferred, ("programme", programme.Text)))))
            : new PatientAnswer<AppendOutcome>(decision);
    }

    /// <summary>The patients whose records a person may read.</summary>
    /// <param name="person">Who asks.</param>
    /// <returns>Their identifiers in the order in which they were admitted.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public async Task<IReadOnlyList<Identifier>> ListAsync(Person person)
    {
        ArgumentNullException.ThrowIfNull(person);
        IReadOnlyList<RecordedEvent> admitted = (await store.ReadKindAsync(Admitted)).Events;
        IReadOnlyList<RecordedEvent> transferred = (await store.ReadKindAsync(Transferred)).Events;
        Dictionary<StreamName, Identifier> programmes = [];
        foreach (RecordedEvent one in admitted.Concat(transferred).Where(static e => e.Stream.Area == Area).OrderBy(static e => e.Position))
        {
            programmes[one.Stream] = ProgrammeIn(one);
        }

        return [.. admitted.Where(e => programmes.TryGetValue(e.Stream, out Identifier? p) && AccessRule.Decide(person, Verb.ReadPatient, p) == AccessDecision.Granted).Select(static e => e.Stream.Id)];
    }

    /// <summary>Who asked for the records of a programme's patients.</summary>
    /// <param name="person">Who asks for the audit.</param>
    /// <param name="programme">The programme.</param>
    /// <returns>The questions in order, where it was granted.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public async Task<PatientAnswer<IReadOnlyList<RecordedEvent>>> AuditOfAsync(Person person, Identifier programme)
    {
        AccessDecision decision = AccessRule.Decide(person, Verb.ReadAudit, programme);
        return decision == AccessDecision.Granted
            ? new(decision, [.. (await store.ReadKindAsync(Audit.Read)).Events.Where(e => ProgrammeOrNull(e) == programme.Text)])
            : new(decision);
    }

    private async Task<StreamReading> TogetherAsync(IReadOnlyList<StreamQuery> parts)
    {
        if (parts.Count == 1)
        {
            return await store.ReadAsync(parts[0]);
        }

        Dictionary<long, RecordedEvent> events = [];
        SortedSet<long> spoiled = [];
        foreach (StreamQuery part in parts)
        {
            StreamReading read = await store.ReadAsync(part);
            foreach (RecordedEvent one in read.Events)
            {
                events.TryAdd(one.Sequence, one);
            }

            spoiled.UnionWith(read.Spoiled);
        }

        return new StreamReading([.. events.Values.OrderBy(static e => e.Sequence)], [.. spoiled]);
    }

    private static void RefuseMoves(IReadOnlyList<EventDraft> drafts)
    {
        ArgumentNullException.ThrowIfNull(drafts);
        if (drafts.FirstOrDefault(static d => d.Kind == Admitted || d.Kind == Transferred) is EventDraft moves)
        {
            throw new InputFaultException(new InputFault(FaultCode.NotAChoice, "kind", moves.Kind.Text, "an event about the patient's course", "Admit or transfer the patient instead."));
        }
    }

    private static StreamName StreamOf(Identifier patient) => StreamName.In(Area, patient);

    private static Identifier ProgrammeIn(RecordedEvent one) => Identifier.Of(ProgrammeOrNull(one) ?? "none", "programme");

    private static string? ProgrammeOrNull(RecordedEvent one)
    {
        using JsonDocument payload = JsonDocument.Parse(one.Payload.Bytes);
        return payload.RootElement.TryGetProperty("programme", out JsonElement programme) ? programme.GetString() : null;
    }

    /// <summary>The same two questions to the store whether or not there is such a patient; a text that is no identifier asks for one that is never there.</summary>
    private async Task<(AccessDecision Decision, StreamName Stream, Identifier? Programme)> DecideAsync(Person person, Verb verb, string patient)
    {
        ArgumentNullException.ThrowIfNull(patient);
        StreamName stream = StreamOf(Identifier.IsOne(patient) ? Identifier.Of(patient) : Identifier.Of("no-one"));
        StreamReading admitted = await store.ReadAsync(new StreamQuery(stream, 0, Admitted));
        StreamReading transferred = await store.ReadAsync(new StreamQuery(stream, 0, Transferred));
        RecordedEvent? last = admitted.Events.Concat(transferred.Events).MaxBy(static e => e.Sequence);
        Identifier? programme = last is null ? null : ProgrammeIn(last);
        AccessDecision decision = AccessRule.Decide(person, verb, programme);
        return (decision, stream, decision == AccessDecision.NotThere ? null : programme);
    }

    private async Task<StoreFault?> AuditAsync(Person person, string patient, AccessDecision decision, Identifier? programme)
    {
        (string, string)[] members = [("decision", decision.ToString()), ("patient", Identifier.IsOne(patient) ? patient : "(no identifier)")];
        try
        {
            await store.AppendAsync(new AppendRequest(
                Audit.StreamOf(person.Id), null, person.Id, Audit.Draft(Audit.Read, programme is null ? members : [.. members, ("programme", programme.Text)])));
            return null;
        }
        catch (StoreFaultException refused)
        {
            return refused.Fault;
        }
    }
}
