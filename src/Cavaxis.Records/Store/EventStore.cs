using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Chain;
using Cavaxis.Records.Engines;
using Cavaxis.Records.Events;
using Cavaxis.Records.Faults;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Cavaxis.Records.Store;

/// <summary>The store on SQLite or PostgreSQL through Entity Framework.</summary>
public sealed class EventStore : IEventStore, IDisposable
{
    private readonly StoreDatabase database;
    private readonly TimeProvider clock;

    /// <summary>Writers of one process take turns in the order in which they come; between processes the database's lock decides.</summary>
    private readonly SemaphoreSlim turn = new(1, 1);

    private EventStore(StoreDatabase database, TimeProvider clock) => (this.database, this.clock) = (database, clock);

    /// <inheritdoc/>
    public event Action<StreamName, long>? Changed;

    /// <summary>The database, for the rest of this room.</summary>
    internal StoreDatabase Database => database;

    /// <summary>Opens a store and makes its tables where they are missing.</summary>
    /// <param name="address">Where it is.</param>
    /// <param name="clock">The clock that dates events.</param>
    /// <returns>The store.</returns>
    /// <exception cref="StoreFaultException">It cannot be opened or is no store.</exception>
    public static async Task<EventStore> OpenAsync(StoreAddress address, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(address);
        ArgumentNullException.ThrowIfNull(clock);
        return new EventStore(await StoreDatabase.OpenAsync(address), clock);
    }

    /// <inheritdoc/>
    public Task<AppendOutcome> AppendAsync(AppendRequest request, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        return AppendAsync(request, static _ => Task.CompletedTask, cancel);
    }

    /// <summary>Keeps events and does something to the other tables, all or none.</summary>
    /// <param name="request">The events.</param>
    /// <param name="alongside">What else belongs to the same change; called only where the events are kept.</param>
    /// <param name="cancel">Gives up waiting for a turn.</param>
    /// <returns>Kept, or not kept.</returns>
    internal async Task<AppendOutcome> AppendAsync(AppendRequest request, Func<RecordContext, Task> alongside, CancellationToken cancel)
    {
        AppendOutcome outcome;
        await turn.WaitAsync(cancel);
        try
        {
            // A commit waits for the disk, and SQLite does that on the calling thread: it must not be a thread of the screen.
            outcome = await Task.Run(() => database.DoAsync(context => AppendAsync(context, request, alongside)), CancellationToken.None);
        }
        finally
        {
            turn.Release();
        }

        if (outcome is Appended appended)
        {
            Changed?.Invoke(request.Stream, appended.Version);
        }

        return outcome;
    }

    /// <inheritdoc/>
    public Task<StreamReading> ReadAsync(StreamQuery query, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(query);
        string stream = query.Stream.Text;
        return database.DoAsync(async context =>
        {
            IQueryable<EventRow> rows = context.Events.AsNoTracking().Where(e => e.Stream == stream);
            if (query.After > 0)
            {
                rows = rows.Where(e => e.Sequence > query.After);
            }

            if (query.Kind?.Text is string kind)
            {
                rows = rows.Where(e => e.Kind == kind);
            }

            if (query.OccurredFrom is DateTimeOffset from)
            {
                long us = Moment.ToMicroseconds(from);
                rows = rows.Where(e => e.OccurredUs >= us);
            }

            if (query.OccurredBefore is DateTimeOffset before)
            {
                long us = Moment.ToMicroseconds(before);
                rows = rows.Where(e => e.OccurredUs < us);
            }

            if (query.Without?.Text is string without)
            {
                rows = rows.Where(e => e.Kind != without || e.Corrects != null);
            }

            if (query.LastHappened is int happened)
            {
                rows = rows.OrderByDescending(static e => e.OccurredUs).ThenByDescending(static e => e.Sequence).Take(happened);
            }

            if (query.LastWritten is int written)
            {
                rows = rows.OrderByDescending(static e => e.Sequence).Take(written);
            }

            // Put in order here: asked to order by sequence, SQLite walks the whole stream instead of the index of kind and time.
            List<EventRow> found = await rows.ToListAsync(cancel);
            found.Sort(static (a, b) => a.Sequence.CompareTo(b.Sequence));
            return Believed(found);
        });
    }

    /// <inheritdoc/>
    public Task<StreamReading> ReadAllAsync(long after, int most, CancellationToken cancel = default) => database.DoAsync(async context =>
        Believed(await context.Events.AsNoTracking().Where(e => e.Position > after).OrderBy(static e => e.Position).Take(most).ToListAsync(cancel)));

    /// <inheritdoc/>
    public Task<StreamReading> ReadKindAsync(EventKind kind, long after = 0, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(kind);
        string text = kind.Text;
        return database.DoAsync(async context => Believed(
            await context.Events.AsNoTracking().Where(e => e.Kind == text && e.Position > after).OrderBy(static e => e.Position).ToListAsync(cancel)));
    }

    /// <inheritdoc/>
    public Task<IReadOnlyList<StreamName>> StreamsAsync(string area, CancellationToken cancel = default) => database.DoAsync<IReadOnlyList<StreamName>>(async context =>
    {
        // The digit after '/' in the order of code points is '0': all names of the area and no others lie between.
        string from = area + "/";
        string to = area + "0";
        List<string> names = await context.Events
            .Where(e => e.Sequence == 1 && e.Stream.CompareTo(from) > 0 && e.Stream.CompareTo(to) < 0).Select(static e => e.Stream).ToListAsync(cancel);
        return [.. names.Where(StreamName.IsOne).Order(StringComparer.Ordinal).Select(StreamName.Of)];
    });

    /// <inheritdoc/>
    public Task<ChainHead> HeadAsync(CancellationToken cancel = default) => database.DoAsync(static context => HeadAsync(context));

    /// <inheritdoc/>
    public async Task<ChainAnchor> AnchorAsync(CancellationToken cancel = default) => new(await HeadAsync(cancel), Moment.Cut(clock.GetUtcNow()));

    /// <summary>Closes the database.</summary>
    public void Dispose()
    {
        database.Dispose();
        turn.Dispose();
    }

    private async Task<AppendOutcome> AppendAsync(RecordContext context, AppendRequest request, Func<RecordContext, Task> alongside)
    {
        await using IDbContextTransaction transaction = await context.Database.BeginTransactionAsync();
        await database.Engine.LockForAppendAsync(context);
        string stream = request.Stream.Text;
        long version = await context.Events.Where(e => e.Stream == stream).MaxAsync(static e => (long?)e.Sequence) ?? 0;
        if (request.Expected is long expected && expected != version)
        {
            List<EventRow> meanwhile = await context.Events.AsNoTracking()
                .Where(e => e.Stream == stream && e.Sequence > expected).OrderBy(static e => e.Sequence).ToListAsync();
            return new AppendConflict(version, Believed(meanwhile).Events);
        }

        ChainHead head = await HeadAsync(context);
        DateTimeOffset now = Moment.Cut(clock.GetUtcNow());
        List<EventRow> rows = new(request.Drafts.Count);
        foreach (EventDraft draft in request.Drafts)
        {
            RefuseWrongCorrection(draft, version + rows.Count);
            rows.Add(EventRow.Next(draft, request.Stream, version + rows.Count + 1, request.Who, now, head));
            head = rows[^1].Head;
        }

        // Past Entity Framework, which takes two to three times as long for many rows (bench --records).
        await StoreTables.PutAllAsync(transaction.GetDbTransaction(), rows);
        await alongside(context);
        await transaction.CommitAsync();
        return new Appended([.. rows.Select(static r => r.ToEvent())]);
    }

    private static void RefuseWrongCorrection(EventDraft draft, long version)
    {
        if (draft.Corrects > version)
        {
            throw new InputFaultException(Require.OutOfRange(draft.Corrects.Value, 1, version, "corrects", "Name an event that is in the stream."));
        }
    }

    /// <summary>The end of the chain, which must hold: nothing may be built on a spoiled event.</summary>
    private static async Task<ChainHead> HeadAsync(RecordContext context)
    {
        EventRow? last = await context.Events.AsNoTracking().OrderByDescending(static e => e.Position).FirstOrDefaultAsync();
        return last is null || last.HoldsTogether ? last?.Head ?? ChainHead.Empty : throw new StoreFaultException(new StoreFault(
            StoreFaultCode.BrokenChain, FormattableString.Invariant($"the last event ({last.Position}) was altered"), "a chain that holds", "Verify the store; recover the intact part or restore a backup."));
    }

    private static StreamReading Believed(List<EventRow> rows)
    {
        List<RecordedEvent> events = new(rows.Count);
        List<long> spoiled = [];
        EventNames names = new();
        foreach (EventRow row in rows)
        {
            if (row.HoldsTogether && row.AsEvent(names) is RecordedEvent one)
            {
                events.Add(one);
            }
            else
            {
                spoiled.Add(row.Position);
            }
        }

        return new StreamReading(events, spoiled);
    }
}
