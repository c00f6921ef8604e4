using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Chain;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Store;

namespace Cavaxis.Records.Tests.Store;

/// <summary>What holds on either database.</summary>
public abstract class EventStoreTests
{
    /// <summary>A new and empty store.</summary>
    protected abstract StoreAddress NewAddress();

    private Task<EventStore> OpenAsync() => EventStore.OpenAsync(NewAddress(), new TickingClock());

    [Fact]
    public async Task What_is_appended_is_read_back_as_it_was_given()
    {
        using EventStore store = await OpenAsync();
        DateTimeOffset at = new(2031, 1, 1, 12, 0, 0, 123, 456, TimeSpan.FromHours(2));
        EventDraft draft = new(EventKind.Of("note.free-text"), CanonicalJson.Of("""{"z":"Ünïcödé € 😀 '; DROP TABLE event; --","a":[1.50,null,true]}"""), at);
        Appended appended = Assert.IsType<Appended>(await store.AppendAsync(Drafts.To(1, 0, draft)));

        RecordedEvent read = Assert.Single((await store.ReadAsync(new StreamQuery(Drafts.Patient(1)))).Events);
        Assert.Equal(Assert.Single(appended.Events), read);
        Assert.Equal("""{"a":[1.5,null,true],"z":"Ünïcödé € 😀 '; DROP TABLE event; --"}""", read.Payload.Text);
        Assert.Equal(at, read.OccurredAt);
        Assert.Equal(new DateTimeOffset(2031, 2, 3, 4, 5, 7, TimeSpan.Zero), read.RecordedAt);
        Assert.Equal((1, 1, "anna", EventHash.Genesis), (read.Position, read.Sequence, read.Who.Text, read.PreviousHash));
        Assert.Equal(new ChainHead(1, read.Hash), await store.HeadAsync());
    }

    [Fact]
    public async Task An_event_without_a_time_of_its_own_happened_when_it_was_written_down()
    {
        using EventStore store = await OpenAsync();
        RecordedEvent one = ((Appended)await store.AppendAsync(Drafts.To(1, 0, Drafts.Observation(70)))).Events[0];
        Assert.Equal(one.RecordedAt, one.OccurredAt);
    }

    [Fact]
    public async Task One_chain_runs_through_all_streams()
    {
        using EventStore store = await OpenAsync();
        await store.FillAsync(7);
        IReadOnlyList<RecordedEvent> all = (await store.ReadAllAsync(0, 100)).Events;
        Assert.Equal([1, 2, 3, 4, 5, 6, 7], all.Select(static e => e.Position));
        Assert.Equal([1, 1, 1, 2, 2, 2, 3], all.Select(static e => e.Sequence));
        Assert.Equal(all.SkipLast(1).Select(static e => e.Hash), all.Skip(1).Select(static e => e.PreviousHash));
        Assert.Equal([4, 5], (await store.ReadAllAsync(3, 2)).Events.Select(static e => e.Position));
    }

    [Fact]
    public async Task A_writer_who_did_not_know_of_newer_events_gets_them_and_keeps_nothing()
    {
        using EventStore store = await OpenAsync();
        await store.AppendAsync(Drafts.To(1, 0, Drafts.Observation(70)));
        Appended other = (Appended)await store.AppendAsync(Drafts.To(1, 1, Drafts.Observation(71), Drafts.Observation(72)));

        AppendConflict conflict = Assert.IsType<AppendConflict>(await store.AppendAsync(Drafts.To(1, 1, Drafts.Observation(99))));
        Assert.Equal(3, conflict.Version);
        Assert.Equal(other.Events, conflict.Meanwhile);
        Assert.Equal(3, (await store.HeadAsync()).Position);
        Assert.IsType<Appended>(await store.AppendAsync(Drafts.To(1, conflict.Version, Drafts.Observation(99))));
    }

    [Fact]
    public async Task A_version_that_is_not_reached_yet_is_a_conflict_too()
    {
        using EventStore store = await OpenAsync();
        AppendConflict conflict = Assert.IsType<AppendConflict>(await store.AppendAsync(Drafts.To(1, 5, Drafts.Observation(70))));
        Assert.Equal(0, conflict.Version);
        Assert.Empty(conflict.Meanwhile);
    }

    [Fact]
    public async Task A_correction_is_an_event_and_the_first_value_stays()
    {
        using EventStore store = await OpenAsync();
        await store.AppendAsync(Drafts.To(1, 0, Drafts.Observation(7), Drafts.Observation(71)));
        await store.AppendAsync(Drafts.To(1, 2, Drafts.Observation(70, corrects: 1)));
        await store.AppendAsync(Drafts.To(1, 3, Drafts.Observation(70.5, corrects: 3), new EventDraft(EventKind.Withdrawn, CanonicalJson.Of("""{"reason":"another patient"}"""), corrects: 2)));

        IReadOnlyList<StandingEvent> standing = StandingEvent.Of((await store.ReadAsync(new StreamQuery(Drafts.Patient(1)))).Events);
        Assert.Equal(2, standing.Count);
        Assert.Contains("\"saturationPercent\":7}", standing[0].Original.Payload.Text, StringComparison.Ordinal);
        Assert.Contains("70.5", standing[0].Now.Payload.Text, StringComparison.Ordinal);
        Assert.Equal([3, 4], standing[0].Corrections.Select(static c => c.Sequence));
        Assert.Equal([false, true], standing.Select(static s => s.IsWithdrawn));
    }

    [Fact]
    public async Task A_correction_of_what_is_not_there_is_refused_and_nothing_of_the_request_is_kept()
    {
        using EventStore store = await OpenAsync();
        InputFaultException refused = await Assert.ThrowsAsync<InputFaultException>(
            () => store.AppendAsync(Drafts.To(1, 0, Drafts.Observation(70), Drafts.Observation(71, corrects: 2))));
        Assert.Equal((FaultCode.OutOfRange, "corrects"), (refused.Faults[0].Code, refused.Faults[0].Field));
        Assert.Equal(ChainHead.Empty, await store.HeadAsync());
    }

    [Fact]
    public async Task Events_are_found_by_kind_time_and_number()
    {
        using EventStore store = await OpenAsync();
        DateTimeOffset noon = new(2031, 1, 1, 12, 0, 0, TimeSpan.Zero);
        await store.AppendAsync(Drafts.To(
            1, 0, Drafts.Observation(70, noon), new EventDraft(EventKind.Of("note.free-text"), CanonicalJson.Of("{}"), noon), Drafts.Observation(71, noon.AddHours(1)), Drafts.Observation(72, noon.AddHours(-1))));
        await store.AppendAsync(Drafts.To(2, 0, Drafts.Observation(10, noon)));

        EventKind kind = EventKind.Of("observation.saturation");
        StreamName one = Drafts.Patient(1);
        Assert.Equal([1, 3, 4], await Numbers(new StreamQuery(one, Kind: kind)));
        Assert.Equal([1, 2, 3], await Numbers(new StreamQuery(one, OccurredFrom: noon)));
        Assert.Equal([4], await Numbers(new StreamQuery(one, OccurredBefore: noon)));
        Assert.Equal([3, 4], await Numbers(new StreamQuery(one, After: 2)));
        Assert.Equal([1], await Numbers(new StreamQuery(one, 0, kind, noon, noon.AddHours(1))));
        Assert.Empty(await Numbers(new StreamQuery(Drafts.Patient(3))));

        async Task<IEnumerable<long>> Numbers(StreamQuery query) => (await store.ReadAsync(query)).Events.Select(static e => e.Sequence);
    }

    [Fact]
    public async Task The_streams_of_an_area_are_listed_and_no_others()
    {
        using EventStore store = await OpenAsync();
        foreach (string name in new[] { "patient/b", "patient/A", "patients/c", "person/d", "patient/b" })
        {
            await store.AppendAsync(new AppendRequest(StreamName.Of(name), null, Drafts.Anna, Drafts.Observation(1)));
        }

        Assert.Equal(["patient/A", "patient/b"], (await store.StreamsAsync("patient")).Select(static s => s.Text));
    }

    [Fact]
    public async Task Those_who_watch_are_told_of_what_was_kept_and_of_nothing_else()
    {
        using EventStore store = await OpenAsync();
        List<string> told = [];
        store.Changed += (stream, version) => told.Add(FormattableString.Invariant($"{stream} {version}"));
        await store.AppendAsync(Drafts.To(1, 0, Drafts.Observation(70), Drafts.Observation(71)));
        await store.AppendAsync(Drafts.To(1, 0, Drafts.Observation(72)));
        Assert.Equal(["patient/p1 2"], told);
    }

    [Fact]
    public async Task A_store_is_the_same_after_it_was_closed_and_opened()
    {
        StoreAddress address = NewAddress();
        ChainHead before;
        using (EventStore store = await EventStore.OpenAsync(address, new TickingClock()))
        {
            await store.FillAsync(5);
            before = await store.HeadAsync();
        }

        using EventStore again = await EventStore.OpenAsync(address, new TickingClock());
        Assert.Equal(before, await again.HeadAsync());
        await again.FillAsync(1);
        Assert.Equal(6, (await again.HeadAsync()).Position);
    }

    /// <summary>Each writer reads, adds one to what it read and writes with the version that it read, until it is kept.</summary>
    [Fact]
    public async Task Fifty_writers_at_once_lose_no_update()
    {
        const int Writers = 50;
        const int Each = 4;
        StoreAddress address = NewAddress();
        using EventStore one = await EventStore.OpenAsync(address, new TickingClock());
        using EventStore two = await EventStore.OpenAsync(address, new TickingClock());
        int conflicts = 0;
        await Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Task.Run(async () =>
        {
            EventStore store = writer % 2 == 0 ? one : two;
            for (int i = 0; i < Each; i++)
            {
                while (true)
                {
                    IReadOnlyList<RecordedEvent> known = (await store.ReadAsync(new StreamQuery(Drafts.Patient(writer % 10)))).Events;
                    if (await store.AppendAsync(Drafts.To(writer % 10, known.Count, Drafts.Observation(known.Count + 1))) is Appended)
                    {
                        break;
                    }

                    Interlocked.Increment(ref conflicts);
                }
            }
        })));

        Assert.Equal(Writers * Each, (await one.HeadAsync()).Position);
        for (int patient = 0; patient < 10; patient++)
        {
            IReadOnlyList<RecordedEvent> events = (await two.ReadAsync(new StreamQuery(Drafts.Patient(patient)))).Events;
            Assert.Equal(Enumerable.Range(1, Writers * Each / 10).Select(static n => Drafts.Observation(n).Payload), events.Select(static e => e.Payload));
        }

        Assert.True(conflicts > 0, "no writer met another: the test shows nothing");
        IReadOnlyList<RecordedEvent> all = (await one.ReadAllAsync(0, 1000)).Events;
        Assert.Equal(all.SkipLast(1).Select(static e => e.Hash), all.Skip(1).Select(static e => e.PreviousHash));
    }
}
