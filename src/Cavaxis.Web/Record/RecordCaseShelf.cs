using System.Text;
using Cavaxis.Course.Events;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;
using Cavaxis.Records.Store;
using Cavaxis.Web.Shelf;

namespace Cavaxis.Web.Record;

/// <summary>The shelf of the person who is here, in the record: each version is an event of its patient. One for each window.</summary>
public sealed class RecordCaseShelf : ICaseShelf, IDisposable
{
    private readonly WorkspaceRecord record;
    private readonly IPersonHere here;

    /// <summary>The shelf of a person.</summary>
    /// <param name="record">The record.</param>
    /// <param name="here">Who is here.</param>
    public RecordCaseShelf(WorkspaceRecord record, IPersonHere here)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(here);
        (this.record, this.here) = (record, here);
        record.Cases.Changed += Tell;
    }

    /// <inheritdoc/>
    public event Action<string, long>? Changed;

    /// <inheritdoc/>
    public Task<IReadOnlyList<ShelvedCase>> ListAsync() => RecordFault.InAsync<IReadOnlyList<ShelvedCase>>(async () =>
    {
        List<ShelvedCase> all = [];
        foreach (Identifier id in await record.Patients.ListAsync(await here.NowAsync()))
        {
            if ((await record.Cases.OfAsync(id)).Newest is CaseVersion newest)
            {
                CaseSummary summary = CaseSummary.Of(newest.Json);
                all.Add(new ShelvedCase(id.Text, summary.Title, summary.Invented, newest.Number, newest.SavedAt));
            }
        }

        return [.. all.OrderByDescending(static c => c.SavedAt).ThenBy(static c => c.Title, StringComparer.Ordinal)];
    });

    /// <inheritdoc/>
    public Task<CaseVersion?> OpenAsync(string id) => RecordFault.InAsync(async () =>
        await IsGrantedAsync(id) ? (await record.Cases.OfAsync(Identifier.Of(id))).Newest : null);

    /// <inheritdoc/>
    public Task<CaseVersion?> ReadAsync(string id, long number) => RecordFault.InAsync(async () =>
        await IsGrantedAsync(id) ? await record.Cases.ReadAsync(Identifier.Of(id), number) : null);

    /// <inheritdoc/>
    public Task<CaseVersion> AddAsync(string json, string change) => RecordFault.InAsync(async () =>
    {
        EventDraft first = Draft(json, change, null);
        Person person = await here.NowAsync();
        Identifier programme = person.Roles.Keys.Select(static p => Identifier.Of(p)).FirstOrDefault(p => AccessRule.Decide(person, Verb.AdmitPatient, p) == AccessDecision.Granted)
            ?? throw RecordFault.Of(AccessDecision.NotAllowed, string.Empty);
        PatientAnswer<Identifier> admitted = await record.Patients.AdmitAsync(person, programme, first);
        Identifier id = admitted.Value ?? throw RecordFault.Of(admitted.Decision, string.Empty);
        CaseVersion version = (await record.Cases.OfAsync(id)).Newest!;
        record.Cases.Tell(id.Text, version.Number);
        return version;
    });

    /// <inheritdoc/>
    public Task<SaveOutcome> SaveAsync(string id, string json, long expected, string change) => RecordFault.InAsync(async () =>
    {
        _ = CaseSummary.Of(json);
        Person person = await here.NowAsync();
        while (true)
        {
            // Decided by the record before anything is told of the patient: an empty stream and a foreign one end in the same refusal.
            PatientCases now = Identifier.IsOne(id) ? await record.Cases.OfAsync(Identifier.Of(id)) : PatientCases.None;
            bool isNewer = now.Newest is not null && now.Newest.Number != expected;
            if (isNewer && await IsGrantedAsync(id))
            {
                return new SaveOutcome(false, now.Newest!);
            }

            EventDraft draft = Draft(json, change, now.Notes.IsEmpty ? null : (int)now.Notes[^1].Sequence);
            PatientAnswer<AppendOutcome> answer = isNewer
                ? new PatientAnswer<AppendOutcome>(AccessDecision.NotThere)
                : await record.Patients.WriteAsync(person, id, now.Version, draft);
            if (answer.Decision != AccessDecision.Granted)
            {
                throw RecordFault.Of(answer.Decision, id);
            }

            if (answer.Value is Appended)
            {
                CaseVersion saved = (await record.Cases.ReadAsync(Identifier.Of(id), expected + 1))!;
                record.Cases.Tell(id, saved.Number);
                return new SaveOutcome(true, saved);
            }
        }
    });

    /// <inheritdoc/>
    public Task<IReadOnlyList<VersionNote>> HistoryAsync(string id) => RecordFault.InAsync<IReadOnlyList<VersionNote>>(async () =>
        await IsGrantedAsync(id) ? [.. (await record.Cases.OfAsync(Identifier.Of(id))).Notes.Select(static n => n.Note).Reverse()] : []);

    /// <summary>Leaves the record.</summary>
    public void Dispose() => record.Cases.Changed -= Tell;

    /// <summary>The event of a version.</summary>
    /// <exception cref="InputFaultException">The text is no JSON object, or too long for the record.</exception>
    internal static EventDraft Draft(string json, string change, int? basedOn, DateTimeOffset? at = null)
    {
        _ = CaseSummary.Of(json);
        string words = change.Length > EventLimits.Remark ? change[..EventLimits.Remark] : change;
        ReadOnlyMemory<byte> payload = CourseEventJson.Write(new CaseSaved { CaseText = json, BasedOn = basedOn, Change = string.IsNullOrWhiteSpace(words) ? null : words });
        return new EventDraft(PatientCases.Kind, CanonicalJson.Of(Encoding.UTF8.GetString(payload.Span)), at);
    }

    private void Tell(string id, long number) => Changed?.Invoke(id, number);

    /// <summary>Asks the record, which keeps the question.</summary>
    private async Task<bool> IsGrantedAsync(string id) =>
        (await record.Patients.ReadAsync(await here.NowAsync(), id, PatientRecords.Admitted)).Decision == AccessDecision.Granted;
}
