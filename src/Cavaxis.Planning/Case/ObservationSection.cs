namespace Cavaxis.Planning.Case;

/// <summary>What was read at the bedside at one time, with the support that ran then.</summary>
public sealed record ObservationSection
{
    /// <summary>Mean arterial pressure, mmHg.</summary>
    [Meaning("Mean arterial pressure, mmHg.")]
    [Number(5, 200, "mm[Hg]", UsualSd = 3)]
    public Measurement? MeanArterialPressureMmHg { get; init; }

    /// <summary>Systolic arterial pressure, mmHg.</summary>
    [Meaning("Systolic arterial pressure, mmHg.")]
    [Number(5, 260, "mm[Hg]", UsualSd = 4)]
    public Measurement? SystolicPressureMmHg { get; init; }

    /// <summary>Diastolic arterial pressure, mmHg.</summary>
    [Meaning("Diastolic arterial pressure, mmHg.")]
    [Number(5, 180, "mm[Hg]", UsualSd = 3)]
    public Measurement? DiastolicPressureMmHg { get; init; }

    /// <summary>Central venous pressure, mmHg.</summary>
    [Meaning("Central venous pressure, mmHg.")]
    [Number(-10, 50, "mm[Hg]", UsualSd = 1.5)]
    public Measurement? CentralVenousPressureMmHg { get; init; }

    /// <summary>Mean pulmonary artery pressure, mmHg.</summary>
    [Meaning("Mean pulmonary artery pressure, mmHg.")]
    [Number(0, 120, "mm[Hg]", UsualSd = 2)]
    public Measurement? PulmonaryArteryMeanMmHg { get; init; }

    /// <summary>Systolic pulmonary artery pressure, mmHg.</summary>
    [Meaning("Systolic pulmonary artery pressure, mmHg.")]
    [Number(0, 160, "mm[Hg]", UsualSd = 3)]
    public Measurement? PulmonaryArterySystolicMmHg { get; init; }

    /// <summary>Diastolic pulmonary artery pressure, mmHg.</summary>
    [Meaning("Diastolic pulmonary artery pressure, mmHg.")]
    [Number(0, 100, "mm[Hg]", UsualSd = 2)]
    public Measurement? PulmonaryArteryDiastolicMmHg { get; init; }

    /// <summary>Wedge pressure, mmHg.</summary>
    [Meaning("Pulmonary artery wedge pressure, mmHg.")]
    [Number(0, 60, "mm[Hg]", UsualSd = 2)]
    public Measurement? WedgePressureMmHg { get; init; }

    /// <summary>Heart rate, per minute.</summary>
    [Meaning("Heart rate, per minute.")]
    [Number(20, 260, "/min", UsualSd = 2)]
    public Measurement? HeartRatePerMin { get; init; }

    /// <summary>Velocity-time integral in the left ventricular outflow, cm.</summary>
    [Meaning("Velocity-time integral in the left ventricular outflow tract, cm.")]
    [Number(0, 50, "cm", UsualSd = 1)]
    public Measurement? OutflowVtiCm { get; init; }

    /// <summary>Left ventricular ejection fraction, percent.</summary>
    [Meaning("Left ventricular ejection fraction, percent.")]
    [Number(0, 90, "%", UsualSd = 6)]
    public Measurement? EjectionFractionPercent { get; init; }

    /// <summary>Output of the heart itself, L/min.</summary>
    [Meaning("Output of the heart itself by any method, L/min; the pump flow is not part of it.")]
    [Number(0, 20, "L/min", UsualSd = 0.6)]
    public Measurement? CardiacOutputLPerMin { get; init; }

    /// <summary>Share of the beat with the aortic valve open, percent.</summary>
    [Meaning("Share of the beat with the aortic valve open, percent; 0 when it stays closed.")]
    [Number(0, 60, "%", UsualSd = 3)]
    public Measurement? AorticValveOpenPercent { get; init; }

    /// <summary>Right arm saturation, percent.</summary>
    [Meaning("Saturation at the right hand or in right radial blood, percent.")]
    [Number(10, 100, "%", UsualSd = 2)]
    public Measurement? RightArmSaturationPercent { get; init; }

    /// <summary>Right arm PO2, mmHg.</summary>
    [Meaning("Oxygen tension of right radial blood, mmHg.")]
    [Number(10, 700, "mm[Hg]", UsualSd = 5)]
    public Measurement? RightArmPo2MmHg { get; init; }

    /// <summary>Right arm PCO2, mmHg.</summary>
    [Meaning("Carbon dioxide tension of right radial blood, mmHg.")]
    [Number(8, 200, "mm[Hg]", UsualSd = 2)]
    public Measurement? RightArmPco2MmHg { get; init; }

    /// <summary>Leg saturation, percent.</summary>
    [Meaning("Saturation at a leg or in femoral arterial blood, percent.")]
    [Number(10, 100, "%", UsualSd = 2)]
    public Measurement? LegSaturationPercent { get; init; }

    /// <summary>Mixed venous saturation, percent.</summary>
    [Meaning("Saturation in the pulmonary artery, percent; on veno-venous support it holds returned blood.")]
    [Number(5, 100, "%", UsualSd = 2)]
    public Measurement? PulmonaryArterySaturationPercent { get; init; }

    /// <summary>Saturation before the membrane lung, percent.</summary>
    [Meaning("Saturation before the membrane lung, percent.")]
    [Number(5, 100, "%", UsualSd = 2)]
    public Measurement? PreMembraneSaturationPercent { get; init; }

    /// <summary>Saturation after the membrane lung, percent.</summary>
    [Meaning("Saturation after the membrane lung, percent.")]
    [Number(30, 100, "%", UsualSd = 1)]
    public Measurement? PostMembraneSaturationPercent { get; init; }

    /// <summary>Pressure before the pump, mmHg.</summary>
    [Meaning("Pressure before the pump, mmHg; negative for suction.")]
    [Number(-400, 60, "mm[Hg]", UsualSd = 8)]
    public Measurement? InletPressureMmHg { get; init; }

    /// <summary>Pressure after the pump, before the membrane lung, mmHg.</summary>
    [Meaning("Pressure between pump and membrane lung, mmHg.")]
    [Number(0, 600, "mm[Hg]", UsualSd = 10)]
    public Measurement? OutletPressureMmHg { get; init; }

    /// <summary>Recirculation, percent.</summary>
    [Meaning("Recirculation measured by dilution, percent of the pump flow.")]
    [Number(0, 95, "%", UsualSd = 5)]
    public Measurement? RecirculationPercent { get; init; }
}
