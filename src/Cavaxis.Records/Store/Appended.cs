using Cavaxis.Records.Events;

namespace Cavaxis.Records.Store;

/// <summary>The events are kept, and stay so whatever happens to this process or the machine's power.</summary>
/// <param name="Events">As kept, in order.</param>
public sealed record Appended(IReadOnlyList<RecordedEvent> Events) : AppendOutcome
{
    /// <summary>Number of events in the stream now.</summary>
    public long Version => Events[^1].Sequence;
}
