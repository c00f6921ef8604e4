namespace Cavaxis.Circulation.Calibration;

/// <summary>What is read at the bedside and can tell about the patient's numbers. The unit stands in the name.</summary>
public enum ObservationKind
{
    /// <summary>Mean arterial pressure. Unit: mmHg.</summary>
    ArterialMeanMmHg,

    /// <summary>Systolic arterial pressure. Unit: mmHg.</summary>
    ArterialSystolicMmHg,

    /// <summary>Diastolic arterial pressure. Unit: mmHg.</summary>
    ArterialDiastolicMmHg,

    /// <summary>Central venous pressure, mean. Unit: mmHg.</summary>
    CentralVenousMmHg,

    /// <summary>Mean pulmonary artery pressure. Unit: mmHg.</summary>
    PulmonaryArteryMeanMmHg,

    /// <summary>Systolic pulmonary artery pressure. Unit: mmHg.</summary>
    PulmonaryArterySystolicMmHg,

    /// <summary>Diastolic pulmonary artery pressure. Unit: mmHg.</summary>
    PulmonaryArteryDiastolicMmHg,

    /// <summary>Pulmonary artery wedge pressure, mean. Unit: mmHg.</summary>
    WedgeMmHg,

    /// <summary>Heart rate; taken as it is, not fitted. Unit: /min.</summary>
    HeartRatePerMin,

    /// <summary>Velocity-time integral in the left ventricular outflow. Unit: cm.</summary>
    OutflowVelocityTimeIntegralCm,

    /// <summary>Left ventricular ejection fraction. Unit: %.</summary>
    EjectionFractionPercent,

    /// <summary>Output of the heart itself, by thermodilution or echocardiography. Unit: L/min.</summary>
    NativeOutputLPerMin,

    /// <summary>Saturation before the membrane lung. Unit: %.</summary>
    PreMembraneSaturationPercent,

    /// <summary>Saturation after the membrane lung. Unit: %.</summary>
    PostMembraneSaturationPercent,

    /// <summary>Mixed venous saturation, in the pulmonary artery. Unit: %.</summary>
    MixedVenousSaturationPercent,

    /// <summary>Central venous saturation upstream of the returned blood, taken for that of all native venous blood. Unit: %.</summary>
    CentralVenousSaturationPercent,

    /// <summary>Arterial saturation of the right arm. Unit: %.</summary>
    RightArmSaturationPercent,

    /// <summary>Arterial oxygen tension of the right arm. Unit: mmHg.</summary>
    RightArmPo2MmHg,

    /// <summary>Arterial carbon dioxide tension of the right arm. Unit: mmHg.</summary>
    RightArmPco2MmHg,

    /// <summary>Arterial saturation of a leg. Unit: %.</summary>
    LegSaturationPercent,

    /// <summary>Pump flow; where flow is kept it is taken as it is. Unit: L/min.</summary>
    PumpFlowLPerMin,

    /// <summary>Pump speed over the speed of its curve; where speed is kept it is taken as it is. Unit: 1.</summary>
    PumpSpeedRatio,

    /// <summary>Mean pressure before the pump. Unit: mmHg.</summary>
    InletPressureMmHg,

    /// <summary>Mean pressure after the pump. Unit: mmHg.</summary>
    OutletPressureMmHg,

    /// <summary>Recirculation measured by dilution. Unit: %.</summary>
    RecirculationPercent,

    /// <summary>Share of the beat with the aortic valve open, by echocardiography. Unit: %.</summary>
    AorticValveOpenPercent,
}
