using Cavaxis.Course.Events;

namespace Cavaxis.Course.RunSheets;

/// <summary>A step of a run sheet.</summary>
/// <param name="Planned">The step as it stood when the plan was chosen.</param>
/// <param name="Done">How it was done; null where it was not.</param>
/// <param name="Skipped">Why it was passed over; null where it was not.</param>
/// <param name="SincePrevious">Time since the step that was closed before it; null for the first and for open steps.</param>
public sealed record SheetStep(PlannedStep Planned, Logged<StepDone>? Done, Logged<StepSkipped>? Skipped, TimeSpan? SincePrevious)
{
    /// <summary>How far it is.</summary>
    public StepState State => (Done, Skipped) switch
    {
        ({ Event.Deviation: not null }, _) => StepState.DoneOtherwise,
        ({ }, _) => StepState.Done,
        (_, { }) => StepState.Skipped,
        _ => StepState.Open,
    };

    /// <summary>True for a hard stop.</summary>
    public bool IsHardStop => Planned.HardStop is not null;

    /// <summary>True for a hard stop whose evidence was not written down: nothing after it may be.</summary>
    public bool Holds => IsHardStop && State == StepState.Open;

    /// <summary>When it was closed; null while it is open.</summary>
    public DateTimeOffset? ClosedAt => Done?.OccurredAt ?? Skipped?.OccurredAt;
}
