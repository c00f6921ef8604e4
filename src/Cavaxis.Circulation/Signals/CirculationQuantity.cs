namespace Cavaxis.Circulation.Signals;

/// <summary>Numbers that describe a settled circulation, as they are measured at the bedside. Units stand in the names.</summary>
public enum CirculationQuantity
{
    /// <summary>Beats a minute.</summary>
    HeartRatePerMin,

    /// <summary>Mean arterial pressure (arch).</summary>
    MeanArterialPressureMmHg,

    /// <summary>Mean over the beats of the highest arterial pressure.</summary>
    SystolicPressureMmHg,

    /// <summary>Mean over the beats of the lowest arterial pressure.</summary>
    DiastolicPressureMmHg,

    /// <summary>Systolic less diastolic.</summary>
    PulsePressureMmHg,

    /// <summary>Mean right atrial pressure.</summary>
    CentralVenousPressureMmHg,

    /// <summary>Right ventricular systolic pressure.</summary>
    RightVentricularSystolicMmHg,

    /// <summary>Mean pulmonary artery pressure.</summary>
    PulmonaryArteryMeanMmHg,

    /// <summary>Pulmonary artery systolic pressure.</summary>
    PulmonaryArterySystolicMmHg,

    /// <summary>Pulmonary artery diastolic pressure.</summary>
    PulmonaryArteryDiastolicMmHg,

    /// <summary>Mean pulmonary venous pressure.</summary>
    WedgePressureMmHg,

    /// <summary>Left ventricular pressure at the onset of ventricular activation.</summary>
    LeftVentricularEndDiastolicPressureMmHg,

    /// <summary>Largest left ventricular volume.</summary>
    LeftVentricularEndDiastolicVolumeMl,

    /// <summary>Smallest left ventricular volume.</summary>
    LeftVentricularEndSystolicVolumeMl,

    /// <summary>Left ventricular ejection fraction.</summary>
    LeftVentricularEjectionFractionPercent,

    /// <summary>Largest right ventricular volume.</summary>
    RightVentricularEndDiastolicVolumeMl,

    /// <summary>Right ventricular ejection fraction.</summary>
    RightVentricularEjectionFractionPercent,

    /// <summary>Net volume through the aortic valve in a beat.</summary>
    StrokeVolumeMl,

    /// <summary>Velocity-time integral in the left ventricular outflow: stroke volume over an area of 3.46 cm² in the adult, by mass to 2/3.</summary>
    OutflowVelocityTimeIntegralCm,

    /// <summary>Area of the left ventricular pressure-volume loop in a beat.</summary>
    StrokeWorkMmHgMl,

    /// <summary>Flow through the aortic valve.</summary>
    NativeOutputLPerMin,

    /// <summary>Flow through the lungs.</summary>
    LungFlowLPerMin,

    /// <summary>Flow through the arterioles of the body.</summary>
    SystemicFlowLPerMin,

    /// <summary>Share of the beat with the aortic valve open.</summary>
    AorticValveOpenPercent,

    /// <summary>Systemic vascular resistance, (arterial − central venous)/flow; not defined where the flow is about zero.</summary>
    SystemicResistanceWoodUnits,

    /// <summary>Pulmonary vascular resistance, (pulmonary artery − wedge)/flow; not defined where the flow is about zero.</summary>
    PulmonaryResistanceWoodUnits,

    /// <summary>Pump flow.</summary>
    PumpFlowLPerMin,

    /// <summary>Pump speed over the speed of its curve.</summary>
    PumpSpeedRatio,

    /// <summary>Mean pressure before the pump.</summary>
    InletPressureMmHg,

    /// <summary>Mean pressure after the pump.</summary>
    OutletPressureMmHg,

    /// <summary>Returned blood drained again over pump flow, mean over the breath.</summary>
    RecirculationPercent,

    /// <summary>Lowest recirculation within the breath.</summary>
    RecirculationLowestPercent,

    /// <summary>Highest recirculation within the breath.</summary>
    RecirculationHighestPercent,

    /// <summary>Pump flow less what recirculates.</summary>
    EffectiveFlowLPerMin,

    /// <summary>Recirculation as read at the bedside from contents before and after the membrane lung and in native venous blood; not defined where the two hardly differ.</summary>
    RecirculationByContentPercent,

    /// <summary>Saturation in the ascending aorta: right hand, coronaries.</summary>
    RightArmSaturationPercent,

    /// <summary>Saturation in the arch: left hand.</summary>
    LeftArmSaturationPercent,

    /// <summary>Saturation in the descending aorta: legs, kidneys.</summary>
    LowerBodySaturationPercent,

    /// <summary>Saturation in the pulmonary artery.</summary>
    PulmonaryArterySaturationPercent,

    /// <summary>Saturation of native venous blood, weighted by flow.</summary>
    VenousSaturationPercent,

    /// <summary>Saturation before the membrane lung.</summary>
    PreMembraneSaturationPercent,

    /// <summary>Saturation after the membrane lung.</summary>
    PostMembraneSaturationPercent,

    /// <summary>Highest less lowest saturation before the membrane lung within the breath.</summary>
    PreMembraneSwingPercent,

    /// <summary>Oxygen tension in the ascending aorta.</summary>
    RightArmPo2MmHg,

    /// <summary>Carbon dioxide tension in the ascending aorta.</summary>
    RightArmPco2MmHg,

    /// <summary>Oxygen delivery.</summary>
    OxygenDeliveryMlPerMin,

    /// <summary>Oxygen used.</summary>
    OxygenConsumptionMlPerMin,

    /// <summary>Delivery over consumption.</summary>
    DeliveryOverConsumption,

    /// <summary>Oxygen from the lungs.</summary>
    OxygenFromLungsMlPerMin,

    /// <summary>Oxygen from the membrane lung.</summary>
    OxygenFromMembraneMlPerMin,

    /// <summary>Smallest volume of the superior cava over its volume at zero transmural pressure.</summary>
    SuperiorCavaLowestFilling,

    /// <summary>Smallest volume of the abdominal cava over its volume at zero transmural pressure.</summary>
    InferiorCavaLowestFilling,

    /// <summary>Smallest openness of the drained sites within the breath; below 0.5 the vein closes on the holes.</summary>
    DrainageLowestOpenness,

    /// <summary>Highest less lowest pressure before the pump within the breath.</summary>
    InletPressureSwingMmHg,
}
