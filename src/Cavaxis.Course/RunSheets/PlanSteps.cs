using Cavaxis.Course.Events;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Steps;

namespace Cavaxis.Course.RunSheets;

/// <summary>
/// Takes a computed plan with its step list into the record. The steps are kept as they stood, so that the sheet of a procedure does not change under
/// the hands of a team when the program or the case does.
/// </summary>
public static class PlanSteps
{
    /// <summary>The event that chooses a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="steps">Its step list.</param>
    /// <param name="caseEntry">Number of the entry whose case it was computed from; null where it is not in the record.</param>
    /// <param name="reason">Why this one; null where that was not said.</param>
    /// <returns>The event.</returns>
    public static PlanChosen Choose(CannulationPlan plan, IReadOnlyList<ProcedureStep> steps, long? caseEntry = null, string? reason = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(steps);
        return new PlanChosen
        {
            Name = plan.Name,
            Configuration = plan.Configuration,
            CaseEntry = caseEntry is long entry ? checked((int)entry) : null,
            Rank = plan.Rank,
            FlowLPerMin = plan.Circuit.FlowLPerMin,
            Reason = reason,
            Cannulae = [.. plan.Cannulae.Select(static c => new PlannedCannula
            {
                Role = c.Role,
                Device = c.DeviceId,
                Route = c.Route,
                Side = c.Side,
                DepthCm = c.Fit?.PlannedDepthCm.Value,
                DepthLowCm = c.Fit?.PlannedDepthCm.Low,
                DepthHighCm = c.Fit?.PlannedDepthCm.High,
            })],
            Steps = [.. steps.Select(Of)],
        };
    }

    private static PlannedStep Of(ProcedureStep step) => new()
    {
        Number = step.Number,
        Action = step.Action,
        ShowsIt = [.. step.ShowsIt.Select(View)],
        CannotShowIt = [.. step.CannotShowIt.Select(View)],
        HardStop = step.HardStop,
        EvidenceAvailable = step.EvidenceAvailable,
        Pitfall = step.Pitfall,
        PredictedPitfall = step.PredictedPitfall,
        Cannula = step.Cannula,
        Phase = step.Phase,
    };

    private static StepView View(string words) => new() { Words = words };
}
