using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>An entry was taken back as entered in error.</summary>
public sealed record EntryWithdrawn : CourseEvent
{
    /// <summary>Why.</summary>
    [Text(EventLimits.Remark)]
    public required string Reason { get; init; }
}
