using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Events;

namespace Cavaxis.Records.Store;

/// <summary>Events that are to be kept together, all or none.</summary>
public sealed record AppendRequest
{
    /// <summary>Most events in one request.</summary>
    public const int MostEvents = 10_000;

    /// <summary>Makes a request.</summary>
    /// <param name="stream">Whose events.</param>
    /// <param name="expected">Number of events that the writer knew of in the stream; null where it does not matter what others wrote.</param>
    /// <param name="who">Who writes.</param>
    /// <param name="drafts">The events, in order; at least one.</param>
    /// <exception cref="InputFaultException">No event, too many, or a negative number.</exception>
    public AppendRequest(StreamName stream, long? expected, Identifier who, params IReadOnlyList<EventDraft> drafts)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(who);
        ArgumentNullException.ThrowIfNull(drafts);
        if (drafts.Count is 0 or > MostEvents)
        {
            throw new InputFaultException(Require.OutOfRange(drafts.Count, 1, MostEvents, "events", "Write them in parts."));
        }

        if (expected < 0)
        {
            throw new InputFaultException(Require.OutOfRange(expected.Value, 0, long.MaxValue, "expected version", "Give the number of events that were read, 0 for a new stream."));
        }

        (Stream, Expected, Who, Drafts) = (stream, expected, who, [.. drafts]);
    }

    /// <summary>Whose events.</summary>
    public StreamName Stream { get; }

    /// <summary>Number of events that the writer knew of; null where it does not matter.</summary>
    public long? Expected { get; }

    /// <summary>Who writes.</summary>
    public Identifier Who { get; }

    /// <summary>The events, in order.</summary>
    public IReadOnlyList<EventDraft> Drafts { get; }
}
