using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Course.RunSheets;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Patients;
using Cavaxis.Records.Store;

namespace Cavaxis.Bedside.Courses;

/// <summary>
/// The courses of patients as a person may read and write them. Whether they may is decided by <see cref="PatientRecords"/>; the answers carry its
/// decision. Whoever may not write learns nothing of what is wrong with their writing.
/// </summary>
/// <param name="records">The records of patients.</param>
/// <param name="clock">Tells the time to which days are counted, and beyond which nothing can have happened.</param>
/// <param name="rules">Rules of the programmes that decided otherwise than <see cref="ProgrammeRules.Usual"/>, by programme.</param>
public sealed class CourseRecords(PatientRecords records, TimeProvider clock, IReadOnlyDictionary<string, ProgrammeRules>? rules = null)
{
    private const int LastReadings = 20;

    /// <summary>How far a bedside clock may run ahead of this one before a time counts as in the future. Assumption of this project.</summary>
    public static readonly TimeSpan ClockSlack = TimeSpan.FromMinutes(10);

    /// <summary>Takes a new patient in, with the first case.</summary>
    /// <param name="person">Who asks.</param>
    /// <param name="programme">Programme of the patient.</param>
    /// <param name="caseText">The case file as text; it need not be free of faults yet.</param>
    /// <returns>The new record where it was granted: written, or refused for what is wrong with the text; no patient is then admitted.</returns>
    /// <exception cref="StoreFaultException">The store cannot be written.</exception>
    public async Task<PatientAnswer<CourseOutcome>> AdmitAsync(Person person, Identifier programme, string caseText)
    {
        CourseWriting first = new(new CaseSaved { CaseText = caseText });
        (IReadOnlyList<EventDraft> drafts, IReadOnlyList<InputFault> faults) = WritingCheck.Of([first], Latest);
        AccessDecision decision = AccessRule.Decide(person, Verb.AdmitPatient, programme);
        if (decision == AccessDecision.Granted && faults.Count > 0)
        {
            return new PatientAnswer<CourseOutcome>(decision, new CourseRefused(faults));
        }

        // One request: a patient without a case cannot be left behind by a process that is killed in between.
        PatientAnswer<Admission> admitted = await records.AdmitWithAsync(person, programme, drafts);
        return new PatientAnswer<CourseOutcome>(admitted.Decision, admitted.Value is Admission kept ? Told(kept.Patient.Text, kept.Outcome) : null);
    }

    /// <summary>Reads a patient's course.</summary>
    /// <param name="person">Who asks.</param>
    /// <param name="patient">The patient's identifier as it was given, whatever it is.</param>
    /// <returns>The course, where it was granted.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public async Task<PatientAnswer<CourseReading>> ReadAsync(Person person, string patient)
    {
        PatientAnswer<StreamReading> answer = await records.ReadAsync(person, patient);
        return new PatientAnswer<CourseReading>(answer.Decision, answer.Value is StreamReading stream ? EventTranslation.Reading(patient, stream) : null, answer.AuditFault);
    }

    /// <summary>Reads the course of one quantity in a stretch of time, as for drawing it: readings of other times and quantities are left in the record.</summary>
    /// <param name="person">Who asks.</param>
    /// <param name="patient">The patient's identifier as it was given.</param>
    /// <param name="quantity">The quantity.</param>
    /// <param name="from">Not before.</param>
    /// <param name="before">Earlier than.</param>
    /// <returns>The same readings as the whole course would give for it, where it was granted.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public async Task<PatientAnswer<SeriesReading>> SeriesAsync(Person person, string patient, ObservedQuantity quantity, DateTimeOffset from, DateTimeOffset before)
    {
        PatientAnswer<StreamReading> answer = await records.ReadPartsAsync(person, patient, stream =>
        [
            new StreamQuery(stream, Without: EventTranslation.Observations),
            new StreamQuery(stream, 0, EventTranslation.Observations, from, before, Holding: EventTranslation.NameIn(quantity)),
        ]);
        if (answer.Value is not StreamReading stream)
        {
            return new PatientAnswer<SeriesReading>(answer.Decision, null, answer.AuditFault);
        }

        (IReadOnlyList<CourseEntry> entries, IReadOnlyList<UnreadEntry> unread) = EventTranslation.Entries(stream.Events);
        QuantitySeries? series = PatientCourse.Of(entries).Series.GetValueOrDefault(quantity);
        return new PatientAnswer<SeriesReading>(answer.Decision, new SeriesReading(series?.Between(from, before) ?? [], unread, stream.Spoiled), answer.AuditFault);
    }

    /// <summary>Whether a person may do something with a patient's record, as for showing what they may do.</summary>
    /// <param name="person">Who asks.</param>
    /// <param name="patient">The patient's identifier as it was given.</param>
    /// <param name="verb">What they want to do.</param>
    /// <returns>The decision.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public Task<AccessDecision> MayAsync(Person person, string patient, Verb verb) => records.MayAsync(person, verb, patient);

    /// <summary>Writes down what happened, all or none. Steps of a run sheet are held against it first.</summary>
    /// <param name="person">Who writes.</param>
    /// <param name="patient">The patient's identifier as it was given.</param>
    /// <param name="expected">Version of the reading on the strength of which it is written; null where it does not matter what others wrote, as for a value read from a monitor.</param>
    /// <param name="writings">At least one event, at most <see cref="AppendRequest.MostEvents"/>.</param>
    /// <returns>Where it was granted: <see cref="CourseWritten"/>, <see cref="CourseConflict"/> with what others wrote, or <see cref="CourseRefused"/> with every fault.</returns>
    /// <exception cref="StoreFaultException">The store cannot be written; nothing was kept.</exception>
    public async Task<PatientAnswer<CourseOutcome>> RecordAsync(Person person, string patient, long? expected, params IReadOnlyList<CourseWriting> writings)
    {
        ArgumentNullException.ThrowIfNull(writings);
        (IReadOnlyList<EventDraft> drafts, IReadOnlyList<InputFault> faults) = WritingCheck.Of(writings, Latest);
        Verb verb = writings.Any(static w => w.Corrects is not null) ? Verb.Correct : Verb.Record;
        AccessDecision decision = await records.MayAsync(person, verb, patient);
        if (decision != AccessDecision.Granted)
        {
            return new PatientAnswer<CourseOutcome>(decision);
        }

        if (faults.Count == 0 && writings.Any(StepCheck.IsStep))
        {
            PatientAnswer<CourseReading> read = await ReadAsync(person, patient);
            if (read.Value is not CourseReading reading)
            {
                return new PatientAnswer<CourseOutcome>(read.Decision);
            }

            // Whoever wrote with an older version in mind is told of the others' writing rather than of what is missing by now.
            expected ??= reading.Version;
            faults = expected == reading.Version ? StepCheck.Faults(reading.Course, writings, person, RulesOf(reading.Programme), clock.GetUtcNow()) : [];
        }

        if (faults.Count > 0)
        {
            return new PatientAnswer<CourseOutcome>(AccessDecision.Granted, new CourseRefused(faults));
        }

        try
        {
            PatientAnswer<AppendOutcome> answer = await records.WriteAsync(person, patient, expected, drafts);
            return new PatientAnswer<CourseOutcome>(answer.Decision, answer.Value is AppendOutcome outcome ? Told(patient, outcome) : null);
        }
        catch (InputFaultException refused)
        {
            return new PatientAnswer<CourseOutcome>(AccessDecision.Granted, new CourseRefused(refused.Faults));
        }
    }

    /// <summary>Puts an entry right. The earlier one stays visible.</summary>
    /// <param name="person">Who writes.</param>
    /// <param name="patient">The patient's identifier as it was given.</param>
    /// <param name="expected">Version of the reading.</param>
    /// <param name="entry">Number of the entry.</param>
    /// <param name="instead">What really happened.</param>
    /// <param name="occurredAt">When it really happened.</param>
    /// <returns>As for <see cref="RecordAsync"/>.</returns>
    /// <exception cref="StoreFaultException">The store cannot be written; nothing was kept.</exception>
    public Task<PatientAnswer<CourseOutcome>> CorrectAsync(Person person, string patient, long? expected, long entry, CourseEvent instead, DateTimeOffset occurredAt) =>
        RecordAsync(person, patient, expected, new CourseWriting(instead, occurredAt, entry));

    /// <summary>Takes an entry back as entered in error. It stays visible and no longer counts.</summary>
    /// <param name="person">Who writes.</param>
    /// <param name="patient">The patient's identifier as it was given.</param>
    /// <param name="expected">Version of the reading.</param>
    /// <param name="entry">Number of the entry.</param>
    /// <param name="reason">Why.</param>
    /// <returns>As for <see cref="RecordAsync"/>.</returns>
    /// <exception cref="StoreFaultException">The store cannot be written; nothing was kept.</exception>
    public Task<PatientAnswer<CourseOutcome>> WithdrawAsync(Person person, string patient, long? expected, long entry, string reason) =>
        RecordAsync(person, patient, expected, new CourseWriting(new EntryWithdrawn { Reason = reason }, null, entry));

    /// <summary>The patients whose records a person may read, each in one line.</summary>
    /// <param name="person">Who asks.</param>
    /// <returns>Those on support first, longest first; then the others, last admitted first.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public async Task<IReadOnlyList<PatientSummary>> ListAsync(Person person)
    {
        DateTimeOffset now = clock.GetUtcNow();
        List<PatientSummary> all = [];
        foreach (Identifier patient in await records.ListAsync(person))
        {
            if (await BriefAsync(person, patient.Text) is CourseReading reading)
            {
                all.Insert(0, SummaryLine.Of(reading, now));
            }
        }

        return [.. all.OrderBy(static s => s.Running?.Started.OccurredAt ?? DateTimeOffset.MaxValue)];
    }

    /// <summary>A course without all but the last of its readings, as one line of a list needs it.</summary>
    private async Task<CourseReading?> BriefAsync(Person person, string patient)
    {
        PatientAnswer<StreamReading> answer = await records.ReadPartsAsync(person, patient, static stream =>
        [
            new StreamQuery(stream, Without: EventTranslation.Observations),
            new StreamQuery(stream, Kind: EventTranslation.Observations, LastHappened: LastReadings),
            new StreamQuery(stream, LastWritten: 1),
        ]);
        if (answer.Value is not StreamReading stream)
        {
            return null;
        }

        // One of the last readings that stands as it was written is later than any that was left out. Where there is none, the whole course tells.
        CourseReading brief = EventTranslation.Reading(patient, stream);
        bool enough = stream.Events.Count(static e => e.Kind == EventTranslation.Observations && e.Corrects is null) < LastReadings
            || brief.Course.Entries.Any(static e => e.Original.Event is Observed && !e.IsCorrected);
        return enough ? brief : (await ReadAsync(person, patient)).Value;
    }

    private DateTimeOffset Latest => clock.GetUtcNow() + ClockSlack;

    private ProgrammeRules RulesOf(string programme) => rules?.GetValueOrDefault(programme) ?? ProgrammeRules.Usual;

    private static CourseOutcome Told(string patient, AppendOutcome outcome)
    {
        switch (outcome)
        {
            case Appended appended:
                return new CourseWritten(patient, appended.Version, EventTranslation.Entries(appended.Events).Entries);
            case AppendConflict conflict:
                IReadOnlyList<CourseEntry> meanwhile = EventTranslation.Entries(conflict.Meanwhile).Entries;
                return new CourseConflict(conflict.Version, meanwhile, PatientCourse.Of(meanwhile).Timeline);
            default:
                throw new InvalidOperationException($"{outcome.GetType().Name} is not an outcome of an append.");
        }
    }
}
