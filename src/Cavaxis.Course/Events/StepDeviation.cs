using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>How a step was done otherwise than it stood, and why.</summary>
public sealed record StepDeviation
{
    /// <summary>What was done instead.</summary>
    [Text(EventLimits.Remark)]
    public required string What { get; init; }

    /// <summary>Why.</summary>
    [Text(EventLimits.Remark)]
    public required string Reason { get; init; }
}
