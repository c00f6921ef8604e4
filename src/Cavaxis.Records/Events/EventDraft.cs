using Cavaxis.Quantities.Faults;

namespace Cavaxis.Records.Events;

/// <summary>An event that someone wants to be kept.</summary>
public sealed record EventDraft
{
    /// <summary>Makes a draft.</summary>
    /// <param name="kind">What happened.</param>
    /// <param name="payload">The particulars.</param>
    /// <param name="occurredAt">When it happened at the bedside; null for the moment in which it is written down.</param>
    /// <param name="corrects">Sequence in the same stream of the event that this one puts right; null for none.</param>
    /// <exception cref="InputFaultException">The number of the corrected event is not positive, or a withdrawal names none.</exception>
    public EventDraft(EventKind kind, CanonicalJson payload, DateTimeOffset? occurredAt = null, long? corrects = null)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(payload);
        if (corrects is < 1 || (kind == EventKind.Withdrawn && corrects is null))
        {
            throw new InputFaultException(new InputFault(
                FaultCode.OutOfRange, "corrects", corrects is null ? "(nothing)" : "below 1", "the number of an event of the same stream, from 1", "Name the event that is put right."));
        }

        (Kind, Payload, Corrects) = (kind, payload, corrects);
        OccurredAt = occurredAt is DateTimeOffset time ? Moment.Cut(time) : null;
    }

    /// <summary>What happened.</summary>
    public EventKind Kind { get; }

    /// <summary>The particulars.</summary>
    public CanonicalJson Payload { get; }

    /// <summary>When it happened at the bedside; null for the moment in which it is written down.</summary>
    public DateTimeOffset? OccurredAt { get; }

    /// <summary>Sequence in the same stream of the event that this one puts right; null for none.</summary>
    public long? Corrects { get; }
}
