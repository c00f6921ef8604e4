namespace Cavaxis.Records.Events;

/// <summary>An event as it is kept, for good.</summary>
/// <param name="Position">Place in the whole store, from 1 without gaps.</param>
/// <param name="Stream">Whose event.</param>
/// <param name="Sequence">Place in the stream, from 1 without gaps.</param>
/// <param name="Kind">What happened.</param>
/// <param name="Payload">The particulars.</param>
/// <param name="Who">Who wrote it down.</param>
/// <param name="OccurredAt">When it happened at the bedside, UTC.</param>
/// <param name="RecordedAt">When it was written down, UTC.</param>
/// <param name="Corrects">Sequence in the stream of the event that this one puts right; null for none.</param>
/// <param name="PreviousHash">Hash of the event before it in the store.</param>
/// <param name="Hash">Hash of all the above.</param>
public sealed record RecordedEvent(
    long Position,
    StreamName Stream,
    long Sequence,
    EventKind Kind,
    CanonicalJson Payload,
    Identifier Who,
    DateTimeOffset OccurredAt,
    DateTimeOffset RecordedAt,
    long? Corrects,
    EventHash PreviousHash,
    EventHash Hash);
