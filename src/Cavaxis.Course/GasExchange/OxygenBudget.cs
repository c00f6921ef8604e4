using Cavaxis.Quantities;

namespace Cavaxis.Course.GasExchange;

/// <summary>Delivery against consumption as measured.</summary>
/// <param name="DeliveryMlPerMin">Oxygen delivered to the body, mL/min.</param>
/// <param name="ConsumptionMlPerMin">Oxygen consumed, mL/min; at least this much when <paramref name="NativeLungKnown"/> is false.</param>
/// <param name="DeliveryOverConsumption">Their ratio; null when consumption is too uncertain to divide by.</param>
/// <param name="ExtractionPercent">Share of the delivered oxygen that is consumed, %.</param>
/// <param name="NativeLungKnown">True when the uptake of the patient's own lung was measured; otherwise consumption is only that of the membrane lung.</param>
/// <param name="Words">What it says in one or two sentences.</param>
public sealed record OxygenBudget(
    Estimate DeliveryMlPerMin, Estimate ConsumptionMlPerMin, Estimate? DeliveryOverConsumption, Estimate? ExtractionPercent, bool NativeLungKnown, string Words);
