using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>A trial of weaning ended. Whether its criteria were met is computed from its steps, not kept.</summary>
public sealed record WeaningEnded : CourseEvent
{
    /// <summary>Number of the entry that began the trial.</summary>
    [Number(1, int.MaxValue, "1")]
    public required int TrialEntry { get; init; }

    /// <summary>How.</summary>
    public required WeaningEnd End { get; init; }

    /// <summary>Why.</summary>
    [Text(EventLimits.Remark)]
    public string? Reason { get; init; }

    /// <summary>Pump flow that was set afterwards, L/min.</summary>
    [Number(0, 10, "L/min")]
    public double? FlowLPerMin { get; init; }

    /// <summary>Sweep gas that was set afterwards, L/min.</summary>
    [Number(0, 20, "L/min")]
    public double? SweepLPerMin { get; init; }
}
