using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Steps;

namespace Cavaxis.Course.Events;

/// <summary>A step of the procedure as it stood when the plan was chosen.</summary>
public sealed record PlannedStep
{
    /// <summary>From 1.</summary>
    [Number(1, EventLimits.Steps, "1")]
    public required int Number { get; init; }

    /// <summary>What is done.</summary>
    [Text(EventLimits.Remark)]
    public required string Action { get; init; }

    /// <summary>Views that can show what must be seen.</summary>
    [Text(EventLimits.Views)]
    public IReadOnlyList<StepView> ShowsIt { get; init; } = [];

    /// <summary>Views that cannot, and why.</summary>
    [Text(EventLimits.Views)]
    public IReadOnlyList<StepView> CannotShowIt { get; init; } = [];

    /// <summary>Evidence without which the procedure does not go on; null where there is none.</summary>
    [Text(EventLimits.Remark)]
    public string? HardStop { get; init; }

    /// <summary>False when none of the views that can show it was known to be on hand.</summary>
    public bool EvidenceAvailable { get; init; }

    /// <summary>What goes wrong here.</summary>
    [Text(EventLimits.Remark)]
    public string? Pitfall { get; init; }

    /// <summary>What the insertion study expects to go wrong here.</summary>
    [Text(EventLimits.Remark)]
    public string? PredictedPitfall { get; init; }

    /// <summary>The cannula that the step is about; null for steps about none or all.</summary>
    public CannulaRole? Cannula { get; init; }

    /// <summary>Part of its insertion.</summary>
    public InsertionPhase Phase { get; init; }
}
