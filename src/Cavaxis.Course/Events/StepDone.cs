using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>A step of the procedure was done.</summary>
public sealed record StepDone : CourseEvent
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

    /// <summary>View in which the evidence was seen.</summary>
    [Text(EventLimits.Line)]
    public string? View { get; init; }

    /// <summary>What was seen.</summary>
    [Text(EventLimits.Remark)]
    public string? Seen { get; init; }

    /// <summary>The image.</summary>
    public ImageReference? Image { get; init; }

    /// <summary>A second person who saw it.</summary>
    public SecondPerson? ConfirmedBy { get; init; }

    /// <summary>How it was done otherwise; null where it was done as it stood.</summary>
    public StepDeviation? Deviation { get; init; }

    /// <summary>Remark.</summary>
    [Text(EventLimits.Remark)]
    public string? Remark { get; init; }
}
