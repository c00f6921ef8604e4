using System.Collections.Immutable;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;
using Cavaxis.Records.Store;

namespace Cavaxis.Records.Tests.Patients;

/// <summary>Who sees and writes what of patients, on either database.</summary>
public abstract class PatientRecordsTests : IAsyncLifetime, IDisposable
{
    private static readonly Identifier North = Identifier.Of("north");
    private static readonly Identifier South = Identifier.Of("south");
    private static readonly Person Reader = Someone("rita", North, Role.Reader);
    private static readonly Person Clinician = Someone("cleo", North, Role.Clinician);
    private static readonly Person Lead = Someone("lena", North, Role.Lead);
    private static readonly Person Admin = Someone("ada", North, Role.Administrator);
    private static readonly Person Stranger = Someone("sven", South, Role.Lead);

    private EventStore store = null!;
    private PatientRecords records = null!;
    private string patient = null!;

    public async Task InitializeAsync()
    {
        store = await EventStore.OpenAsync(NewAddress(), new TickingClock());
        records = new PatientRecords(store);
        patient = (await records.AdmitAsync(Clinician, North)).Value!.Text;
        Assert.IsType<Appended>((await records.WriteAsync(Clinician, patient, 1, Drafts.Observation(70))).Value);
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    protected virtual void Dispose(bool disposing) => store.Dispose();

    /// <summary>A new and empty store.</summary>
    protected abstract StoreAddress NewAddress();

    [Fact]
    public async Task Those_of_the_programme_read_it_by_their_role()
    {
        Assert.All(
            new[] { await records.ReadAsync(Reader, patient), await records.ReadAsync(Clinician, patient), await records.ReadAsync(Lead, patient) },
            static answer => Assert.Equal([1, 2], answer.Value!.Events.Select(static e => e.Sequence)));
        PatientAnswer<StreamReading> refused = await records.ReadAsync(Admin, patient);
        Assert.Equal((AccessDecision.NotAllowed, null), (refused.Decision, refused.Value));
        Assert.Single((await records.ReadAsync(Reader, patient, EventKind.Of("observation.saturation"))).Value!.Events);
    }

    [Fact]
    public async Task A_patient_of_another_programme_is_answered_and_kept_in_the_audit_exactly_as_one_that_does_not_exist()
    {
        string none = new('0', 32);
        Assert.Equal(await records.ReadAsync(Stranger, none), await records.ReadAsync(Stranger, patient));
        Assert.Equal(await records.WriteAsync(Stranger, none, null, Drafts.Observation(1)), await records.WriteAsync(Stranger, patient, null, Drafts.Observation(1)));
        Assert.Equal(await records.TransferAsync(Stranger, none, South), await records.TransferAsync(Stranger, patient, South));
        Assert.Equal(AccessDecision.NotThere, (await records.ReadAsync(Stranger, "'; DROP TABLE event; --")).Decision);
        Assert.Empty(await records.ListAsync(Stranger));

        IReadOnlyList<RecordedEvent> audit = (await store.ReadAsync(new StreamQuery(Audit.StreamOf(Stranger.Id)))).Events;
        Assert.Equal(3, audit.Count);
        Assert.Equal(audit[0].Payload.Text.Replace(none, patient, StringComparison.Ordinal), audit[1].Payload.Text);
        Assert.Equal(2, (await records.ReadAsync(Reader, patient)).Value!.Events.Count);
    }

    [Fact]
    public async Task Writing_correcting_admitting_and_giving_over_need_the_role()
    {
        Assert.Equal(AccessDecision.NotAllowed, (await records.WriteAsync(Reader, patient, null, Drafts.Observation(1))).Decision);
        Assert.Equal(AccessDecision.NotAllowed, (await records.WriteAsync(Admin, patient, null, Drafts.Observation(1, corrects: 2))).Decision);
        Assert.Equal(AccessDecision.NotAllowed, (await records.TransferAsync(Clinician, patient, South)).Decision);
        Assert.Equal(AccessDecision.NotAllowed, (await records.AdmitAsync(Reader, North)).Decision);
        Assert.Equal(AccessDecision.NotThere, (await records.AdmitAsync(Clinician, South)).Decision);
        Assert.IsType<Appended>((await records.WriteAsync(Clinician, patient, null, Drafts.Observation(71, corrects: 2), Drafts.Observation(72))).Value);
        Assert.IsType<AppendConflict>((await records.WriteAsync(Clinician, patient, 2, Drafts.Observation(73))).Value);
        Assert.All((await records.ReadAsync(Reader, patient)).Value!.Events, static e => Assert.Equal("cleo", e.Who.Text));
    }

    [Fact]
    public async Task A_patient_is_moved_by_giving_over_and_by_nothing_else()
    {
        EventDraft forged = new(EventKind.Of("patient.transferred"), CanonicalJson.Of("""{"programme":"south"}"""));
        Assert.Equal(FaultCode.NotAChoice, (await Assert.ThrowsAsync<InputFaultException>(() => records.WriteAsync(Clinician, patient, null, forged))).Faults[0].Code);
        Assert.Equal([patient], (await records.ListAsync(Reader)).Select(static p => p.Text));

        Assert.Equal(AccessDecision.Granted, (await records.TransferAsync(Lead, patient, South)).Decision);
        Assert.Equal(AccessDecision.NotThere, (await records.ReadAsync(Lead, patient)).Decision);
        Assert.Empty(await records.ListAsync(Reader));
        Assert.Equal([patient], (await records.ListAsync(Stranger)).Select(static p => p.Text));
        Assert.Equal(3, (await records.ReadAsync(Stranger, patient)).Value!.Events.Count);
    }

    [Fact]
    public async Task Who_read_what_is_kept_and_read_by_those_who_may()
    {
        await records.ReadAsync(Reader, patient);
        await records.ReadAsync(Admin, patient);
        await records.ReadAsync(Stranger, patient);
        IReadOnlyList<RecordedEvent> audit = (await records.AuditOfAsync(Lead, North)).Value!;
        Assert.Equal(["rita", "ada"], audit.Select(static e => e.Who.Text));
        Assert.All(audit, e => Assert.Contains(patient, e.Payload.Text, StringComparison.Ordinal));
        Assert.Equal(AccessDecision.NotAllowed, (await records.AuditOfAsync(Clinician, North)).Decision);
        Assert.Equal(AccessDecision.NotThere, (await records.AuditOfAsync(Stranger, North)).Decision);
    }

    [Fact]
    public async Task Identifiers_of_patients_are_long_and_of_chance()
    {
        List<string> ids = [];
        for (int i = 0; i < 20; i++)
        {
            ids.Add((await records.AdmitAsync(Clinician, North)).Value!.Text);
        }

        Assert.Equal(20, ids.Distinct().Count());
        Assert.All(ids, static id => Assert.Matches("^[0-9a-f]{32}$", id));
        Assert.True(ids.Select(static id => id[..4]).Distinct().Count() > 15, "the identifiers begin alike: they are not of chance");
        Assert.Equal([patient, .. ids], (await records.ListAsync(Reader)).Select(static p => p.Text));
    }

    private static Person Someone(string id, Identifier programme, Role role) => new(
        Identifier.Of(id), id + " (invented)", ImmutableSortedDictionary.Create<string, Role>(StringComparer.Ordinal).Add(programme.Text, role), true, null, 1);
}
