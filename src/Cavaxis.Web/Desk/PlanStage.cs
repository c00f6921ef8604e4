namespace Cavaxis.Web.Desk;

/// <summary>How far the plan of the open case has come.</summary>
public enum PlanStage
{
    /// <summary>No plan: the case has faults, or none was computed yet.</summary>
    None,

    /// <summary>Ranked with the bounds of recirculation; the circulation is still being computed.</summary>
    Quick,

    /// <summary>Ranked with the circulation of each plan.</summary>
    Whole,
}
