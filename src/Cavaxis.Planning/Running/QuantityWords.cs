using Cavaxis.Circulation.Signals;

namespace Cavaxis.Planning.Running;

/// <summary>Plain words and unit of each quantity that describes a circulation.</summary>
public static class QuantityWords
{
    /// <summary>Words.</summary>
    /// <param name="quantity">Which.</param>
    /// <returns>Lower-case words without unit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a quantity.</exception>
    public static string Of(CirculationQuantity quantity) => quantity switch
    {
        CirculationQuantity.HeartRatePerMin => "heart rate",
        CirculationQuantity.MeanArterialPressureMmHg => "mean arterial pressure",
        CirculationQuantity.SystolicPressureMmHg => "systolic pressure",
        CirculationQuantity.DiastolicPressureMmHg => "diastolic pressure",
        CirculationQuantity.PulsePressureMmHg => "pulse pressure",
        CirculationQuantity.CentralVenousPressureMmHg => "central venous pressure",
        CirculationQuantity.RightVentricularSystolicMmHg => "right ventricular systolic pressure",
        CirculationQuantity.PulmonaryArteryMeanMmHg => "mean pulmonary artery pressure",
        CirculationQuantity.PulmonaryArterySystolicMmHg => "systolic pulmonary artery pressure",
        CirculationQuantity.PulmonaryArteryDiastolicMmHg => "diastolic pulmonary artery pressure",
        CirculationQuantity.WedgePressureMmHg => "wedge pressure",
        CirculationQuantity.LeftVentricularEndDiastolicPressureMmHg => "left ventricular end-diastolic pressure",
        CirculationQuantity.LeftVentricularEndDiastolicVolumeMl => "left ventricular end-diastolic volume",
        CirculationQuantity.LeftVentricularEndSystolicVolumeMl => "left ventricular end-systolic volume",
        CirculationQuantity.LeftVentricularEjectionFractionPercent => "left ventricular ejection fraction",
        CirculationQuantity.RightVentricularEndDiastolicVolumeMl => "right ventricular end-diastolic volume",
        CirculationQuantity.RightVentricularEjectionFractionPercent => "right ventricular ejection fraction",
        CirculationQuantity.StrokeVolumeMl => "stroke volume through the aortic valve",
        CirculationQuantity.OutflowVelocityTimeIntegralCm => "outflow velocity-time integral",
        CirculationQuantity.StrokeWorkMmHgMl => "left ventricular stroke work",
        CirculationQuantity.NativeOutputLPerMin => "output of the heart",
        CirculationQuantity.LungFlowLPerMin => "flow through the lungs",
        CirculationQuantity.SystemicFlowLPerMin => "flow through the body",
        CirculationQuantity.AorticValveOpenPercent => "share of the beat with the aortic valve open",
        CirculationQuantity.SystemicResistanceWoodUnits => "systemic resistance",
        CirculationQuantity.PulmonaryResistanceWoodUnits => "pulmonary resistance",
        CirculationQuantity.PumpFlowLPerMin => "pump flow",
        CirculationQuantity.PumpSpeedRatio => "pump speed over the speed of its curve",
        CirculationQuantity.InletPressureMmHg => "pressure before the pump",
        CirculationQuantity.OutletPressureMmHg => "pressure after the pump",
        CirculationQuantity.RecirculationPercent => "recirculation, mean",
        CirculationQuantity.RecirculationLowestPercent => "recirculation, lowest in the breath",
        CirculationQuantity.RecirculationHighestPercent => "recirculation, highest in the breath",
        CirculationQuantity.EffectiveFlowLPerMin => "pump flow less recirculation",
        CirculationQuantity.RecirculationByContentPercent => "recirculation as contents at the bedside tell it",
        CirculationQuantity.RightArmSaturationPercent => "saturation of the right arm",
        CirculationQuantity.LeftArmSaturationPercent => "saturation of the left arm",
        CirculationQuantity.LowerBodySaturationPercent => "saturation of the legs",
        CirculationQuantity.PulmonaryArterySaturationPercent => "saturation in the pulmonary artery",
        CirculationQuantity.VenousSaturationPercent => "saturation of native venous blood",
        CirculationQuantity.PreMembraneSaturationPercent => "saturation before the membrane lung",
        CirculationQuantity.PostMembraneSaturationPercent => "saturation after the membrane lung",
        CirculationQuantity.PreMembraneSwingPercent => "swing of the saturation before the membrane lung",
        CirculationQuantity.RightArmPo2MmHg => "oxygen tension of the right arm",
        CirculationQuantity.RightArmPco2MmHg => "carbon dioxide tension of the right arm",
        CirculationQuantity.OxygenDeliveryMlPerMin => "oxygen delivery",
        CirculationQuantity.OxygenConsumptionMlPerMin => "oxygen used",
        CirculationQuantity.DeliveryOverConsumption => "oxygen delivery over use",
        CirculationQuantity.OxygenFromLungsMlPerMin => "oxygen from the lungs",
        CirculationQuantity.OxygenFromMembraneMlPerMin => "oxygen from the membrane lung",
        CirculationQuantity.SuperiorCavaLowestFilling => "lowest filling of the superior cava (1: no stretch)",
        CirculationQuantity.InferiorCavaLowestFilling => "lowest filling of the inferior cava (1: no stretch)",
        CirculationQuantity.DrainageLowestOpenness => "lowest openness of the drained veins (1: free)",
        CirculationQuantity.InletPressureSwingMmHg => "swing of the pressure before the pump",
        _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "Not a quantity of the circulation."),
    };

    /// <summary>Why a quantity may have no value.</summary>
    /// <param name="quantity">Which.</param>
    /// <returns>Lower-case words.</returns>
    public static string NotDefined(CirculationQuantity quantity) => quantity switch
    {
        CirculationQuantity.SystemicResistanceWoodUnits => "the flow through the body is about zero, so that there is nothing to divide the pressure by",
        CirculationQuantity.PulmonaryResistanceWoodUnits => "the flow through the lungs is about zero, so that there is nothing to divide the pressure by",
        CirculationQuantity.RecirculationByContentPercent => "the membrane lung adds hardly any oxygen, so that contents tell no recirculation",
        _ => "it has no value in this circulation",
    };

    /// <summary>Unit, as its name ends.</summary>
    /// <param name="quantity">Which.</param>
    /// <returns>Unit; "1" for a pure number.</returns>
    public static string UnitOf(CirculationQuantity quantity)
    {
        string name = quantity.ToString();
        return Units.FirstOrDefault(u => name.EndsWith(u.Ending, StringComparison.Ordinal)).Unit ?? "1";
    }

    // Longer endings first, so that mL/min is not read as L/min.
    private static readonly (string Ending, string Unit)[] Units =
    [
        ("MmHgMl", "mmHg mL"), ("MmHg", "mmHg"), ("Percent", "%"), ("MlPerMin", "mL/min"), ("LPerMin", "L/min"), ("WoodUnits", "Wood units"),
        ("PerMin", "/min"), ("Ml", "mL"), ("Cm", "cm"),
    ];
}
