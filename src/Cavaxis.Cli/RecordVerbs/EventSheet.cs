using System.Text.Json;
using Cavaxis.Records.Events;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>An event as it is printed.</summary>
/// <param name="Sequence">Place in its stream.</param>
/// <param name="Kind">What happened.</param>
/// <param name="OccurredAt">When, UTC.</param>
/// <param name="RecordedAt">When it was written down, UTC.</param>
/// <param name="Who">Who wrote it down.</param>
/// <param name="Corrects">Event that it puts right; null for none.</param>
/// <param name="Stream">Whose event.</param>
/// <param name="Payload">The particulars.</param>
public sealed record EventSheet(
    long Sequence, string Kind, DateTimeOffset OccurredAt, DateTimeOffset RecordedAt, string Who, long? Corrects, string Stream, JsonElement Payload)
{
    /// <summary>Of an event.</summary>
    /// <param name="one">The event.</param>
    /// <returns>The same for people.</returns>
    public static EventSheet Of(RecordedEvent one)
    {
        ArgumentNullException.ThrowIfNull(one);
        using JsonDocument payload = JsonDocument.Parse(one.Payload.Bytes);
        return new(one.Sequence, one.Kind.Text, one.OccurredAt, one.RecordedAt, one.Who.Text, one.Corrects, one.Stream.Text, payload.RootElement.Clone());
    }
}
