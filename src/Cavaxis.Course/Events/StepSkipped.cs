using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>A step of the procedure was passed over.</summary>
public sealed record StepSkipped : CourseEvent
{
    /// <summary>Number of the entry that chose the plan.</summary>
    [Number(1, int.MaxValue, "1")]
    public required int PlanEntry { get; init; }

    /// <summary>Number of the step in the plan.</summary>
    [Number(1, EventLimits.Steps, "1")]
    public required int Step { get; init; }

    /// <summary>What was to be done, as it was shown.</summary>
    [Text(EventLimits.Remark)]
    public required string Action { get; init; }

    /// <summary>Why.</summary>
    [Text(EventLimits.Remark)]
    public required string Reason { get; init; }

    /// <summary>A second person who agreed.</summary>
    public SecondPerson? ConfirmedBy { get; init; }
}
