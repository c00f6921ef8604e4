using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>
/// What the model of heart, vessels, circuit and blood gases computes for a plan: a small set of patients who all agree with the case,
/// each with an anatomy of its own, brought to rest at the planned flow. Estimates are median and 90 % interval of the set.
/// </summary>
/// <param name="Members">Patients computed.</param>
/// <param name="NotSettled">Of these, how many did not come to rest and are left out.</param>
/// <param name="PumpFlowLPerMin">Flow reached.</param>
/// <param name="RecirculationPercent">Returned blood drained again, over pump flow; null with return to an artery alone.</param>
/// <param name="RecirculationLowestPercent">Lowest within the breath.</param>
/// <param name="RecirculationHighestPercent">Highest within the breath.</param>
/// <param name="RightArmSaturationPercent">Saturation of right arm, coronaries and right brain.</param>
/// <param name="LowerBodySaturationPercent">Saturation of the lower body.</param>
/// <param name="PreMembraneSaturationPercent">Saturation before the membrane lung.</param>
/// <param name="DeliveryToConsumption">Oxygen delivery over consumption.</param>
/// <param name="MeanArterialPressureMmHg">Mean arterial pressure.</param>
/// <param name="LeftVentricle">Loading of the left ventricle; null without return to an artery.</param>
/// <param name="Assumed">What was assumed about the patient beyond the case.</param>
public sealed record CirculationOutlook(
    int Members,
    int NotSettled,
    Estimate PumpFlowLPerMin,
    Estimate? RecirculationPercent,
    Estimate? RecirculationLowestPercent,
    Estimate? RecirculationHighestPercent,
    Estimate RightArmSaturationPercent,
    Estimate LowerBodySaturationPercent,
    Estimate PreMembraneSaturationPercent,
    Estimate DeliveryToConsumption,
    Estimate MeanArterialPressureMmHg,
    VentricleLoading? LeftVentricle,
    IReadOnlyList<string> Assumed);
