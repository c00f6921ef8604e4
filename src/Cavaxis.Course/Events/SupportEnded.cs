using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>Support ended.</summary>
public sealed record SupportEnded : CourseEvent
{
    /// <summary>Why.</summary>
    public required SupportEndReason Reason { get; init; }

    /// <summary>Remark.</summary>
    [Text(EventLimits.Remark)]
    public string? Remark { get; init; }
}
