using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>An examination after support was planned.</summary>
public sealed record FollowUpPlanned : CourseEvent
{
    /// <summary>Key of the item in the schedule, or a name of the team's own.</summary>
    [Text(EventLimits.Name)]
    public required string Item { get; init; }

    /// <summary>What is to be done.</summary>
    [Text(EventLimits.Line)]
    public required string What { get; init; }

    /// <summary>Not before (ISO 8601 with offset).</summary>
    [Text(EventLimits.Time)]
    public required string DueFrom { get; init; }

    /// <summary>Not after (ISO 8601 with offset).</summary>
    [Text(EventLimits.Time)]
    public required string DueBy { get; init; }

    /// <summary>Why.</summary>
    [Text(EventLimits.Remark)]
    public string? Reason { get; init; }

    internal override void Check(FaultLedger ledger)
    {
        DateTimeOffset? from = EventFault.Moment(ledger, "dueFrom", DueFrom);
        DateTimeOffset? by = EventFault.Moment(ledger, "dueBy", DueBy);
        if (from > by)
        {
            EventFault.Contradiction(ledger, "dueBy", DueBy, "not before dueFrom", "Exchange the two.");
        }
    }
}
