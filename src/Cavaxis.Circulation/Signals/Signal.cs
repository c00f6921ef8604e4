namespace Cavaxis.Circulation.Signals;

/// <summary>What is recorded over a breath. Pressures in mmHg, flows in L/min, volumes in mL, gas contents in mL/dL.</summary>
public enum Signal
{
    /// <summary>Right atrial pressure.</summary>
    RightAtrialPressure,

    /// <summary>Right ventricular pressure.</summary>
    RightVentricularPressure,

    /// <summary>Pulmonary artery pressure.</summary>
    PulmonaryArteryPressure,

    /// <summary>Pulmonary venous pressure, taken as the wedge pressure.</summary>
    WedgePressure,

    /// <summary>Left atrial pressure.</summary>
    LeftAtrialPressure,

    /// <summary>Left ventricular pressure.</summary>
    LeftVentricularPressure,

    /// <summary>Pressure in the ascending aorta.</summary>
    AscendingAorticPressure,

    /// <summary>Pressure in the aortic arch, taken as the arterial pressure of the left arm.</summary>
    ArterialPressure,

    /// <summary>Pressure in the descending aorta.</summary>
    DescendingAorticPressure,

    /// <summary>Pressure in the superior cava.</summary>
    SuperiorCavaPressure,

    /// <summary>Pressure in the abdominal inferior cava.</summary>
    AbdominalCavaPressure,

    /// <summary>Pleural pressure.</summary>
    PleuralPressure,

    /// <summary>Abdominal pressure.</summary>
    AbdominalPressure,

    /// <summary>Pressure before the pump.</summary>
    InletPressure,

    /// <summary>Pressure after the pump.</summary>
    OutletPressure,

    /// <summary>Left ventricular volume.</summary>
    LeftVentricularVolume,

    /// <summary>Right ventricular volume.</summary>
    RightVentricularVolume,

    /// <summary>Right atrial volume.</summary>
    RightAtrialVolume,

    /// <summary>Volume of the superior cava over its volume at zero transmural pressure.</summary>
    SuperiorCavaFilling,

    /// <summary>Volume of the abdominal cava over its volume at zero transmural pressure.</summary>
    AbdominalCavaFilling,

    /// <summary>How open the drained sites are to the holes, 1 fully.</summary>
    DrainageOpenness,

    /// <summary>Flow through the aortic valve.</summary>
    AorticValveFlow,

    /// <summary>Flow through the pulmonary valve.</summary>
    PulmonaryValveFlow,

    /// <summary>Flow through the mitral valve.</summary>
    MitralFlow,

    /// <summary>Flow through the tricuspid valve.</summary>
    TricuspidFlow,

    /// <summary>Flow through the lungs.</summary>
    LungFlow,

    /// <summary>Flow of the superior cava into the atrium.</summary>
    SuperiorCavaFlow,

    /// <summary>Flow of the inferior cava into the atrium.</summary>
    InferiorCavaFlow,

    /// <summary>Flow from the arch into the descending aorta.</summary>
    DescendingAorticFlow,

    /// <summary>Flow from the ascending aorta into the arch.</summary>
    ArchFlow,

    /// <summary>Pump flow.</summary>
    CircuitFlow,

    /// <summary>Flow through the arterioles of the whole body.</summary>
    SystemicFlow,

    /// <summary>Pump speed over the speed of its curve.</summary>
    SpeedRatio,

    /// <summary>One while the aortic valve is open.</summary>
    AorticValveOpen,

    /// <summary>Share of returned blood in the blood drained at the moment.</summary>
    Recirculation,

    /// <summary>Returned blood drained at the moment, L/min.</summary>
    RecirculatedFlow,

    /// <summary>Oxygen content of pulmonary artery blood.</summary>
    PulmonaryArteryOxygen,

    /// <summary>Oxygen content of venous blood before any returned blood is mixed in, weighted by flow.</summary>
    NativeVenousOxygen,

    /// <summary>Oxygen content in the ascending aorta: coronaries, right arm, right brain.</summary>
    AscendingOxygen,

    /// <summary>Oxygen content in the arch: left arm, left brain.</summary>
    ArchOxygen,

    /// <summary>Oxygen content in the descending aorta.</summary>
    DescendingOxygen,

    /// <summary>Oxygen content in the drainage line, before the membrane lung.</summary>
    PreMembraneOxygen,

    /// <summary>Oxygen content after the membrane lung.</summary>
    PostMembraneOxygen,

    /// <summary>Oxygen content of blood from the lungs.</summary>
    PulmonaryVenousOxygen,

    /// <summary>Carbon dioxide content in the ascending aorta.</summary>
    AscendingCarbonDioxide,

    /// <summary>Carbon dioxide content of pulmonary artery blood.</summary>
    PulmonaryArteryCarbonDioxide,

    /// <summary>Carbon dioxide content after the membrane lung.</summary>
    PostMembraneCarbonDioxide,

    /// <summary>Alveolar oxygen tension, mmHg.</summary>
    AlveolarPo2,

    /// <summary>Alveolar carbon dioxide tension, mmHg.</summary>
    AlveolarPco2,

    /// <summary>Oxygen delivered to the tissues, mL/min.</summary>
    OxygenDelivery,
}
