namespace Cavaxis.Course.Weaning;

/// <summary>What can be read during a weaning trial; those that are observed at other times too are named as there.</summary>
public enum WeaningQuantity
{
    /// <summary>Mean arterial pressure, mmHg.</summary>
    MeanArterialPressureMmHg,

    /// <summary>Systolic arterial pressure, mmHg.</summary>
    SystolicPressureMmHg,

    /// <summary>Central venous pressure, mmHg.</summary>
    CentralVenousPressureMmHg,

    /// <summary>Heart rate, /min.</summary>
    HeartRatePerMin,

    /// <summary>Velocity-time integral of the outflow, cm.</summary>
    OutflowVtiCm,

    /// <summary>Ejection fraction, %.</summary>
    EjectionFractionPercent,

    /// <summary>Lateral mitral annulus systolic velocity, cm/s.</summary>
    LateralMitralVelocityCmPerS,

    /// <summary>Tricuspid annular plane systolic excursion, mm.</summary>
    TricuspidExcursionMm,

    /// <summary>Ejection fraction of the right ventricle by three-dimensional ultrasound, %.</summary>
    RightEjectionFractionPercent,

    /// <summary>
    /// Vasoactive inotropic score: dopamine + dobutamine + 100·adrenaline + 100·noradrenaline + 10·milrinone, all in µg/kg/min, + 10 000·vasopressin in U/kg/min.
    /// </summary>
    VasoactiveInotropicScore,

    /// <summary>Saturation of the right arm, %.</summary>
    RightArmSaturationPercent,

    /// <summary>Oxygen tension of the right arm, mmHg.</summary>
    RightArmPo2MmHg,

    /// <summary>Carbon dioxide tension of the right arm, mmHg.</summary>
    RightArmPco2MmHg,

    /// <summary>PH of the right arm.</summary>
    RightArmPh,

    /// <summary>Inspired oxygen fraction.</summary>
    InspiredOxygenFraction,

    /// <summary>Tidal volume over predicted body weight, mL/kg.</summary>
    TidalVolumeMlPerKg,

    /// <summary>Breaths, /min.</summary>
    RespiratoryRatePerMin,

    /// <summary>End-expiratory pressure, cmH2O.</summary>
    PeepCmH2O,

    /// <summary>Plateau pressure, cmH2O.</summary>
    PlateauPressureCmH2O,

    /// <summary>Swing of the oesophageal pressure with a breath, cmH2O.</summary>
    OesophagealSwingCmH2O,
}
