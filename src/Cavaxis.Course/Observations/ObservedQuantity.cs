namespace Cavaxis.Course.Observations;

/// <summary>What can be observed at the bedside while support runs. The unit is in the name; those that the case file has too are named as there.</summary>
public enum ObservedQuantity
{
    /// <summary>Mean arterial pressure, mmHg.</summary>
    MeanArterialPressureMmHg,

    /// <summary>Systolic arterial pressure, mmHg.</summary>
    SystolicPressureMmHg,

    /// <summary>Diastolic arterial pressure, mmHg.</summary>
    DiastolicPressureMmHg,

    /// <summary>Central venous pressure, mmHg.</summary>
    CentralVenousPressureMmHg,

    /// <summary>Mean pulmonary artery pressure, mmHg.</summary>
    PulmonaryArteryMeanMmHg,

    /// <summary>Systolic pulmonary artery pressure, mmHg.</summary>
    PulmonaryArterySystolicMmHg,

    /// <summary>Diastolic pulmonary artery pressure, mmHg.</summary>
    PulmonaryArteryDiastolicMmHg,

    /// <summary>Wedge pressure, mmHg.</summary>
    WedgePressureMmHg,

    /// <summary>Heart rate, /min.</summary>
    HeartRatePerMin,

    /// <summary>Velocity-time integral of the outflow, cm.</summary>
    OutflowVtiCm,

    /// <summary>Ejection fraction, %.</summary>
    EjectionFractionPercent,

    /// <summary>Lateral mitral annulus systolic velocity, cm/s.</summary>
    LateralMitralVelocityCmPerS,

    /// <summary>Output of the heart, L/min.</summary>
    CardiacOutputLPerMin,

    /// <summary>Share of the beat with the aortic valve open, %.</summary>
    AorticValveOpenPercent,

    /// <summary>End-diastolic diameter of the left ventricle, mm.</summary>
    LeftVentricularDiameterMm,

    /// <summary>Pressure in the abdomen, mmHg.</summary>
    AbdominalPressureMmHg,

    /// <summary>Saturation of the right arm, %.</summary>
    RightArmSaturationPercent,

    /// <summary>Oxygen tension of the right arm, mmHg.</summary>
    RightArmPo2MmHg,

    /// <summary>Carbon dioxide tension of the right arm, mmHg.</summary>
    RightArmPco2MmHg,

    /// <summary>PH of the right arm.</summary>
    RightArmPh,

    /// <summary>Saturation of a leg, %.</summary>
    LegSaturationPercent,

    /// <summary>Tissue saturation of the leg with the cannula, %.</summary>
    CannulatedLimbSaturationPercent,

    /// <summary>Tissue saturation of the other leg, %.</summary>
    OtherLimbSaturationPercent,

    /// <summary>Tissue saturation of the forehead, %.</summary>
    CerebralSaturationPercent,

    /// <summary>Saturation of the pulmonary artery, %.</summary>
    PulmonaryArterySaturationPercent,

    /// <summary>Saturation of the upper cava, %.</summary>
    CentralVenousSaturationPercent,

    /// <summary>Haemoglobin, g/dL.</summary>
    HaemoglobinGPerDl,

    /// <summary>Temperature, °C.</summary>
    TemperatureCelsius,

    /// <summary>Lactate, mmol/L.</summary>
    LactateMmolPerL,

    /// <summary>Urine, mL/h.</summary>
    UrineMlPerH,

    /// <summary>Pump flow, L/min.</summary>
    PumpFlowLPerMin,

    /// <summary>Pump speed, /min.</summary>
    PumpSpeedPerMin,

    /// <summary>Sweep gas, L/min.</summary>
    SweepLPerMin,

    /// <summary>Oxygen fraction of the sweep gas.</summary>
    SweepOxygenFraction,

    /// <summary>Pressure before the pump, mmHg.</summary>
    InletPressureMmHg,

    /// <summary>Pressure before the membrane lung, mmHg.</summary>
    PreMembranePressureMmHg,

    /// <summary>Pressure after the membrane lung, mmHg.</summary>
    PostMembranePressureMmHg,

    /// <summary>Saturation before the membrane lung, %.</summary>
    PreMembraneSaturationPercent,

    /// <summary>Saturation after the membrane lung, %.</summary>
    PostMembraneSaturationPercent,

    /// <summary>Oxygen tension before the membrane lung, mmHg.</summary>
    PreMembranePo2MmHg,

    /// <summary>Oxygen tension after the membrane lung, mmHg.</summary>
    PostMembranePo2MmHg,

    /// <summary>Carbon dioxide tension before the membrane lung, mmHg.</summary>
    PreMembranePco2MmHg,

    /// <summary>Carbon dioxide tension after the membrane lung, mmHg.</summary>
    PostMembranePco2MmHg,

    /// <summary>Recirculation by dilution, %.</summary>
    RecirculationPercent,

    /// <summary>Shakes of the drainage line, /min.</summary>
    LineChatterPerMin,

    /// <summary>Inspired oxygen fraction.</summary>
    InspiredOxygenFraction,

    /// <summary>Tidal volume, mL.</summary>
    TidalVolumeMl,

    /// <summary>Breaths, /min.</summary>
    RespiratoryRatePerMin,

    /// <summary>End-expiratory pressure, cmH2O.</summary>
    PeepCmH2O,

    /// <summary>Plateau pressure, cmH2O.</summary>
    PlateauPressureCmH2O,

    /// <summary>Activated clotting time, s.</summary>
    ActivatedClottingTimeS,

    /// <summary>Activated partial thromboplastin time, s.</summary>
    PartialThromboplastinTimeS,

    /// <summary>Anti-Xa activity, IU/mL.</summary>
    AntiXaIuPerMl,

    /// <summary>Platelets, 10⁹/L.</summary>
    PlateletsGPerL,

    /// <summary>Fibrinogen, g/L.</summary>
    FibrinogenGPerL,

    /// <summary>D-dimer, mg/L.</summary>
    DDimerMgPerL,

    /// <summary>Free haemoglobin of plasma, mg/L.</summary>
    FreeHaemoglobinMgPerL,

    /// <summary>Lactate dehydrogenase, U/L.</summary>
    LactateDehydrogenaseUPerL,

    /// <summary>Heparin, U/h.</summary>
    HeparinUnitsPerH,
}
