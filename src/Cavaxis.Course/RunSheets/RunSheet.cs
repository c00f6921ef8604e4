using Cavaxis.Course.Events;

namespace Cavaxis.Course.RunSheets;

/// <summary>The steps of the chosen plan and how far they are.</summary>
/// <param name="PlanEntry">Number of the entry that chose the plan.</param>
/// <param name="ChosenAt">When the plan was chosen.</param>
/// <param name="Steps">The steps in order.</param>
public sealed record RunSheet(long PlanEntry, DateTimeOffset ChosenAt, IReadOnlyList<SheetStep> Steps)
{
    /// <summary>The first step that is open; null where all are closed.</summary>
    public SheetStep? Next => Steps.FirstOrDefault(static s => s.State == StepState.Open);

    /// <summary>The hard stop that holds everything after it; null where none does.</summary>
    public SheetStep? HoldingAt => Steps.FirstOrDefault(static s => s.Holds);

    /// <summary>True where no step is open.</summary>
    public bool IsThrough => Next is null;

    /// <summary>Hard stops that were passed over or done otherwise; whoever reads the sheet must see them.</summary>
    public IReadOnlyList<SheetStep> Overridden => [.. Steps.Where(static s => s is { IsHardStop: true, State: StepState.Skipped or StepState.DoneOtherwise })];

    /// <summary>A step by its number.</summary>
    /// <param name="number">From 1.</param>
    /// <returns>The step; null where there is none.</returns>
    public SheetStep? Find(int number) => number >= 1 && number <= Steps.Count ? Steps[number - 1] : null;

    /// <summary>The sheet of a plan.</summary>
    /// <param name="plan">The chosen plan.</param>
    /// <param name="done">Steps of this plan that were done and stand; of two for one step the later counts.</param>
    /// <param name="skipped">Steps of this plan that were passed over and stand. A step that was done too is done.</param>
    /// <returns>The sheet.</returns>
    public static RunSheet Of(Logged<PlanChosen> plan, IReadOnlyList<Logged<StepDone>> done, IReadOnlyList<Logged<StepSkipped>> skipped)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(done);
        ArgumentNullException.ThrowIfNull(skipped);
        SheetStep[] steps = [.. plan.Event.Steps.Select(step => new SheetStep(
            step, done.LastOrDefault(d => d.Event.Step == step.Number), skipped.LastOrDefault(s => s.Event.Step == step.Number), null))];
        DateTimeOffset[] closed = [.. steps.Select(static s => s.ClosedAt).OfType<DateTimeOffset>().Order()];
        return new RunSheet(plan.Sequence, plan.OccurredAt, [.. steps.Select(s => s with { SincePrevious = Since(s.ClosedAt, closed) })]);
    }

    private static TimeSpan? Since(DateTimeOffset? at, DateTimeOffset[] closed)
    {
        int place = at is DateTimeOffset moment ? Array.IndexOf(closed, moment) : 0;
        return place > 0 ? at - closed[place - 1] : null;
    }
}
