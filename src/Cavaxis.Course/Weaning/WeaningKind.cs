namespace Cavaxis.Course.Weaning;

/// <summary>What is tried.</summary>
public enum WeaningKind
{
    /// <summary>Pump flow is brought down on veno-arterial support.</summary>
    VenoArterialFlow,

    /// <summary>Sweep gas is brought down to nothing on veno-venous support, the flow kept.</summary>
    VenoVenousSweep,
}
