using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>What the plan is expected to do for oxygen, between the two limits of recirculation.</summary>
/// <param name="RecirculationFractionBounds">Zero (separated limit) to Qe/(Qe + CO) (complete mixing); bounds, not a prediction.</param>
/// <param name="ArterialSaturationPercent">Arterial saturation without help from the native lung; the interval spans both limits. With return to an artery: of the blood that the heart ejects.</param>
/// <param name="PumpBloodSaturationPercent">Saturation of the blood that the pump returns.</param>
/// <param name="DeliveryToConsumption">Oxygen delivery over oxygen consumption.</param>
/// <param name="FlowToCardiacOutput">Pump flow over native cardiac output; null where the output is unknown and not needed.</param>
/// <param name="Note">What was assumed.</param>
public sealed record GasExchangeOutlook(
    Estimate RecirculationFractionBounds,
    Estimate ArterialSaturationPercent,
    Estimate PumpBloodSaturationPercent,
    Estimate DeliveryToConsumption,
    Estimate? FlowToCardiacOutput,
    string Note);
