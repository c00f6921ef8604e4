using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>What became of the patient.</summary>
public sealed record OutcomeNoted : CourseEvent
{
    /// <summary>What.</summary>
    public required OutcomeKind Outcome { get; init; }

    /// <summary>Remark.</summary>
    [Text(EventLimits.Remark)]
    public string? Remark { get; init; }
}
