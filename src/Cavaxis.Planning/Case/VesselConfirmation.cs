namespace Cavaxis.Planning.Case;

/// <summary>How a person made sure that a vessel is the vein or the artery it is taken for.</summary>
public enum VesselConfirmation
{
    /// <summary>It collapses, or does not, under the probe.</summary>
    Compression,

    /// <summary>Colour or pulsed Doppler flow pattern.</summary>
    Doppler,

    /// <summary>Followed in the transverse and the longitudinal plane.</summary>
    TwoPlanes,

    /// <summary>Blood gas or pressure from the needle.</summary>
    BloodOrPressure,

    /// <summary>Computed tomography.</summary>
    Ct,
}
