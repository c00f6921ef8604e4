using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Chain;
using Cavaxis.Records.Events;
using Cavaxis.Records.Faults;

namespace Cavaxis.Records.Store;

/// <summary>Events that are only ever added, in one chain of hashes. What is acknowledged survives the end of the process.</summary>
public interface IEventStore
{
    /// <summary>Told after each append with the stream's name and its new version. May come on any thread.</summary>
    event Action<StreamName, long>? Changed;

    /// <summary>Keeps events, all or none.</summary>
    /// <param name="request">The events.</param>
    /// <param name="cancel">Gives up waiting for a turn; once writing has begun it is finished.</param>
    /// <returns>Kept, or not kept with what others wrote meanwhile.</returns>
    /// <exception cref="InputFaultException">A correction names an event that is not in the stream.</exception>
    /// <exception cref="StoreFaultException">The store cannot be written; nothing was kept.</exception>
    Task<AppendOutcome> AppendAsync(AppendRequest request, CancellationToken cancel = default);

    /// <summary>Events of a stream.</summary>
    /// <param name="query">Which.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>The events in the order in which they were written down; empty where there is no such stream.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    Task<StreamReading> ReadAsync(StreamQuery query, CancellationToken cancel = default);

    /// <summary>Events of all streams.</summary>
    /// <param name="after">Only those with a greater place in the store.</param>
    /// <param name="most">At most so many.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>The events in order.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    Task<StreamReading> ReadAllAsync(long after, int most, CancellationToken cancel = default);

    /// <summary>Events of one kind in all streams.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="after">Only those with a greater place in the store.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>The events in order.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    Task<StreamReading> ReadKindAsync(EventKind kind, long after = 0, CancellationToken cancel = default);

    /// <summary>Streams of an area.</summary>
    /// <param name="area">Such as "patient".</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>Their names in order.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    Task<IReadOnlyList<StreamName>> StreamsAsync(string area, CancellationToken cancel = default);

    /// <summary>The end of the chain.</summary>
    /// <param name="cancel">Gives up.</param>
    /// <returns>Place and hash of the last event.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    Task<ChainHead> HeadAsync(CancellationToken cancel = default);

    /// <summary>The end of the chain as a line to print and keep elsewhere.</summary>
    /// <param name="cancel">Gives up.</param>
    /// <returns>The line with the time at which it was taken.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    Task<ChainAnchor> AnchorAsync(CancellationToken cancel = default);
}
