using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Events;

namespace Cavaxis.Records.Chain;

/// <summary>An event as it lies in a store. Nothing about it is believed before its hash has been computed again.</summary>
internal sealed record EventRow
{
    /// <summary>Place in the whole store.</summary>
    public required long Position { get; init; }

    /// <summary>Whose event.</summary>
    public required string Stream { get; init; }

    /// <summary>Place in the stream.</summary>
    public required long Sequence { get; init; }

    /// <summary>What happened.</summary>
    public required string Kind { get; init; }

    /// <summary>The particulars in canonical bytes.</summary>
    public required byte[] Payload { get; init; }

    /// <summary>Who wrote it down.</summary>
    public required string Who { get; init; }

    /// <summary>When it happened, microseconds since 1970.</summary>
    public required long OccurredUs { get; init; }

    /// <summary>When it was written down, microseconds since 1970.</summary>
    public required long RecordedUs { get; init; }

    /// <summary>Sequence of the corrected event; null for none.</summary>
    public required long? Corrects { get; init; }

    /// <summary>Hash of the event before it.</summary>
    public required byte[] PreviousHash { get; init; }

    /// <summary>Hash of this event.</summary>
    public required byte[] Hash { get; init; }

    /// <summary>The row of a new event, with its hash.</summary>
    /// <param name="draft">What is to be kept.</param>
    /// <param name="stream">Whose event.</param>
    /// <param name="sequence">Its place in the stream.</param>
    /// <param name="who">Who writes it down.</param>
    /// <param name="now">When, UTC.</param>
    /// <param name="before">The end of the chain.</param>
    /// <returns>The row.</returns>
    public static EventRow Next(EventDraft draft, StreamName stream, long sequence, Identifier who, DateTimeOffset now, ChainHead before)
    {
        EventRow row = new()
        {
            Position = before.Position + 1,
            Stream = stream.Text,
            Sequence = sequence,
            Kind = draft.Kind.Text,
            Payload = draft.Payload.Bytes.ToArray(),
            Who = who.Text,
            OccurredUs = Moment.ToMicroseconds(draft.OccurredAt ?? now),
            RecordedUs = Moment.ToMicroseconds(now),
            Corrects = draft.Corrects,
            PreviousHash = before.Hash.Bytes.ToArray(),
            Hash = [],
        };
        return row with { Hash = ChainEquation.HashOf(row) };
    }

    /// <summary>True where the row's own hash is that of its contents. 0 stands in the hash for "corrects none", so a row may not say 0 itself.</summary>
    public bool HoldsTogether => Corrects is null or > 0 && PreviousHash.Length == EventHash.Length && ChainEquation.HashOf(this).AsSpan().SequenceEqual(Hash);

    /// <summary>True where names, moments and payload are of the forms that this program writes.</summary>
    /// <param name="names">Names that were read already.</param>
    /// <returns>Whether they are.</returns>
    public bool IsWellFormed(EventNames names) => AsEvent(names) is not null && CanonicalJson.Kept(Payload) is not null;

    /// <summary>The event.</summary>
    /// <param name="names">Names that were read already.</param>
    /// <returns>The event; null where a name or moment in the row is not of the accepted form.</returns>
    public RecordedEvent? AsEvent(EventNames names)
    {
        try
        {
            return ToEvent(names);
        }
        catch (Exception e) when (e is InputFaultException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>The end of a chain that ends with this row.</summary>
    public ChainHead Head => new(Position, EventHash.Of(Hash));

    /// <summary>The event.</summary>
    /// <returns>The same as a value.</returns>
    /// <exception cref="InputFaultException">A name in the row is not of the accepted form: the row is damaged.</exception>
    public RecordedEvent ToEvent() => ToEvent(new EventNames());

    private RecordedEvent ToEvent(EventNames names) => new(
        Position,
        names.Stream(Stream),
        Sequence,
        names.Kind(Kind),
        CanonicalJson.Trusted(Payload),
        names.Who(Who),
        Moment.OfMicroseconds(OccurredUs),
        Moment.OfMicroseconds(RecordedUs),
        Corrects,
        EventHash.Of(PreviousHash),
        EventHash.Of(Hash));
}
