namespace Cavaxis.Arteries.Numbers;

/// <summary>The numbers of the arterial support, in the order of <c>catalogue/arterial-support.json</c>, which gives source and certainty of each.</summary>
public enum ArterialConstant
{
    /// <summary>Share of systemic conductance: brain. Unit: 1.</summary>
    BrainShare,

    /// <summary>Part of the brain's blood that comes by the internal carotid arteries; the rest by the vertebral arteries. Unit: 1.</summary>
    CarotidShareOfBrain,

    /// <summary>Body surface of the person of the table. Unit: m2.</summary>
    ReferenceSurfaceM2,

    /// <summary>Exponent with which radii grow with body surface. Unit: 1.</summary>
    RadiusExponent,

    /// <summary>Growth of pulse wave velocity in ten years of age. Unit: 1.</summary>
    WaveSpeedPerDecade,

    /// <summary>Part of the arterial compliance that lies in the segments; the rest in the ends. Unit: 1.</summary>
    VesselShareOfCompliance,

    /// <summary>Inner diameter of the common femoral artery, men; low and high are two standard deviations. Unit: mm.</summary>
    FemoralMenMm,

    /// <summary>Inner diameter of the common femoral artery, women; low and high are two standard deviations. Unit: mm.</summary>
    FemoralWomenMm,

    /// <summary>Least inner diameter of the axillary artery; low and high are two standard deviations. Unit: mm.</summary>
    AxillaryMm,

    /// <summary>Flow below which a leg of the adult is taken to be in want; least and ample flow as low and high. Unit: mL/min.</summary>
    LegNeedMlPerMin,

    /// <summary>Flow of the common femoral artery at rest; low and high are one standard deviation. Unit: mL/min.</summary>
    LegRestMlPerMin,

    /// <summary>Part of the arterial cannula that lies between skin and artery. Unit: cm.</summary>
    CannulaTrackCm,

    /// <summary>Friction beside the cannula relative to a cannula in the middle of the lumen. Unit: 1.</summary>
    AnnulusFriction,

    /// <summary>Largest share of the lumen that a cannula is taken to fill; a larger one stretches the artery and leaves a film. Unit: 1.</summary>
    LargestFilledShare,

    /// <summary>Factor on the modulus of an artery that a cannula fills by more than half: it is stretched over it. Unit: 1.</summary>
    WallStiffening,

    /// <summary>Viscosity of the walls over their modulus. Unit: s.</summary>
    WallViscosityS,

    /// <summary>Length of the side line from the return line to the distal perfusion cannula. Unit: cm.</summary>
    PerfusionLineCm,

    /// <summary>Inner diameter of that side line and its connectors. Unit: mm.</summary>
    PerfusionLineMm,

    /// <summary>How far contractility is varied up and down for the intervals, one standard deviation. Unit: 1.</summary>
    ContractilityVaried,

    /// <summary>Error of a clamp-on flow meter, one standard deviation. Unit: 1.</summary>
    PumpFlowVaried,

    /// <summary>Spread of one organ's resistance about its share, one standard deviation. Unit: 1.</summary>
    ResistanceVaried,
}
