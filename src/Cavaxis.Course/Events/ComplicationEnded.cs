using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>A complication is over.</summary>
public sealed record ComplicationEnded : CourseEvent
{
    /// <summary>Number of the entry that told of it.</summary>
    [Number(1, int.MaxValue, "1")]
    public required int ComplicationEntry { get; init; }

    /// <summary>What it came to in the end; null where that is as first written.</summary>
    public ComplicationGravity? Gravity { get; init; }

    /// <summary>How it ended.</summary>
    [Text(EventLimits.Remark)]
    public required string Result { get; init; }
}
