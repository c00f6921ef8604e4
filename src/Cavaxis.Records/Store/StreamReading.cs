using Cavaxis.Records.Events;

namespace Cavaxis.Records.Store;

/// <summary>Events as read, each with its own hash computed again.</summary>
/// <param name="Events">The events that hold, in order.</param>
/// <param name="Spoiled">Places in the store of events whose contents are not those that were hashed. They are not given, and must be told to the reader.</param>
public sealed record StreamReading(IReadOnlyList<RecordedEvent> Events, IReadOnlyList<long> Spoiled);
