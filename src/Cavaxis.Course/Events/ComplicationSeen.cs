using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>Something went wrong.</summary>
public sealed record ComplicationSeen : CourseEvent
{
    /// <summary>What.</summary>
    public required ComplicationKind Complication { get; init; }

    /// <summary>What it came to, as known now.</summary>
    public required ComplicationGravity Gravity { get; init; }

    /// <summary>Name of the cannula concerned, where one is.</summary>
    [Text(EventLimits.Name)]
    public string? Cannula { get; init; }

    /// <summary>The patient's own side, where it has one.</summary>
    public BodySide? Side { get; init; }

    /// <summary>What was seen.</summary>
    [Text(EventLimits.Remark)]
    public string? Description { get; init; }

    /// <summary>What was done.</summary>
    [Text(EventLimits.Remark)]
    public string? Action { get; init; }
}
