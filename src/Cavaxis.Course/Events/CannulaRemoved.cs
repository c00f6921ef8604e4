using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>A cannula was taken out.</summary>
public sealed record CannulaRemoved : CourseEvent
{
    /// <summary>Name of the cannula in this record, such as "drainage"; unique among those that lie.</summary>
    [Text(EventLimits.Name)]
    public required string Cannula { get; init; }

    /// <summary>How.</summary>
    public required RemovalMethod Method { get; init; }

    /// <summary>Whether clot hung on it; null where it was not looked at.</summary>
    public bool? ClotOnCannula { get; init; }

    /// <summary>Remark.</summary>
    [Text(EventLimits.Remark)]
    public string? Remark { get; init; }
}
