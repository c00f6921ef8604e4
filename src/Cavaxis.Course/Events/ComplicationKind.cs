namespace Cavaxis.Course.Events;

/// <summary>What went wrong.</summary>
public enum ComplicationKind
{
    /// <summary>Bleeding where a cannula enters.</summary>
    CannulationSiteBleeding,

    /// <summary>Bleeding elsewhere, not inside the skull.</summary>
    OtherBleeding,

    /// <summary>Bleeding inside the skull.</summary>
    IntracranialBleeding,

    /// <summary>Ischaemic stroke.</summary>
    Stroke,

    /// <summary>Too little blood to a limb.</summary>
    LimbIschaemia,

    /// <summary>Pressure in a compartment of a limb.</summary>
    CompartmentSyndrome,

    /// <summary>A cannula or port lies where it should not.</summary>
    CannulaMalposition,

    /// <summary>A vessel was perforated or torn.</summary>
    VesselPerforation,

    /// <summary>A chamber of the heart was perforated.</summary>
    CardiacPerforation,

    /// <summary>Blood or fluid around the heart that obstructs it.</summary>
    Tamponade,

    /// <summary>Dissection of an artery.</summary>
    ArterialDissection,

    /// <summary>Thrombus in a vein that holds or held a cannula.</summary>
    CannulatedVeinThrombosis,

    /// <summary>Thrombus elsewhere in the patient.</summary>
    OtherThrombosis,

    /// <summary>Thrombus in the pulmonary arteries.</summary>
    PulmonaryEmbolism,

    /// <summary>Thrombus in the circuit.</summary>
    CircuitThrombosis,

    /// <summary>The membrane lung fails.</summary>
    MembraneFailure,

    /// <summary>The pump fails.</summary>
    PumpFailure,

    /// <summary>Air in the circuit.</summary>
    AirInCircuit,

    /// <summary>A cannula came out unintended.</summary>
    AccidentalDecannulation,

    /// <summary>The circuit or its membrane lung was changed.</summary>
    CircuitChange,

    /// <summary>Red cells are destroyed.</summary>
    Haemolysis,

    /// <summary>Infection where a cannula enters.</summary>
    CannulaInfection,

    /// <summary>Infection of the bloodstream.</summary>
    BloodstreamInfection,

    /// <summary>Air between lung and chest wall.</summary>
    Pneumothorax,

    /// <summary>The left ventricle distends.</summary>
    VentricularDistension,

    /// <summary>Upper body hypoxaemic while the circuit oxygenates the lower.</summary>
    DifferentialHypoxaemia,

    /// <summary>Kidney replacement was begun.</summary>
    KidneyReplacement,

    /// <summary>Thrombocytopenia by antibodies to heparin.</summary>
    HeparinThrombocytopenia,

    /// <summary>Another, told in the description.</summary>
    Other,
}
