namespace Cavaxis.Course.Events;

/// <summary>How support is taken back in a trial.</summary>
public enum WeaningMethod
{
    /// <summary>Pump flow is lowered in steps (veno-arterial).</summary>
    FlowSteps,

    /// <summary>Sweep gas, or its oxygen, is lowered in steps (veno-venous).</summary>
    SweepSteps,

    /// <summary>Flow is let run backwards under control (veno-arterial).</summary>
    RetrogradeFlow,

    /// <summary>Otherwise, told in the remark.</summary>
    Other,
}
