using Cavaxis.Records.Events;

namespace Cavaxis.Records.Store;

/// <summary>Nothing was kept: others wrote to the stream first.</summary>
/// <param name="Version">Number of events in the stream now.</param>
/// <param name="Meanwhile">What was written after the version that the writer knew of.</param>
public sealed record AppendConflict(long Version, IReadOnlyList<RecordedEvent> Meanwhile) : AppendOutcome;
