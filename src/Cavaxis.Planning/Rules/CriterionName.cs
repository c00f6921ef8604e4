namespace Cavaxis.Planning.Rules;

/// <summary>The criteria by which plans are ranked. The word is also the key of the command line's weights.</summary>
public enum CriterionName
{
    /// <summary>Probability that every port lies in its zone with imaging.</summary>
    Fit,

    /// <summary>Share of the flow needed that the cannulae carry within the usual pressure limits.</summary>
    FlowReached,

    /// <summary>Largest cannula-to-vessel ratio.</summary>
    VesselRatio,

    /// <summary>Distance of the pump inlet pressure from its limit, mmHg.</summary>
    InletMargin,

    /// <summary>Distance of the pressure after the lung from its limit, mmHg.</summary>
    ReturnMargin,

    /// <summary>Oxygen delivery over consumption.</summary>
    OxygenDelivery,

    /// <summary>Arterial saturation the plan is expected to reach, percent.</summary>
    Saturation,

    /// <summary>Upper bound of recirculation (complete mixing).</summary>
    RecirculationBound,

    /// <summary>Share of the systemic flow target that the pump itself provides.</summary>
    CirculatorySupport,

    /// <summary>Retrograde load on the left ventricle: pump flow against the heart over the systemic flow target.</summary>
    LeftVentricularLoad,

    /// <summary>Threat to a leg, 0 none to 1 arterial cannula without distal perfusion in a narrow artery.</summary>
    LimbThreat,

    /// <summary>Number of vessels punctured or opened.</summary>
    Punctures,

    /// <summary>Groins used, which tie the patient to the bed.</summary>
    GroinsUsed,

    /// <summary>Surgical opening needed, which costs time.</summary>
    SurgicalAccess,
}
