namespace Cavaxis.Planning.Running;

/// <summary>How much of the drained blood has just been returned.</summary>
/// <param name="MeanPercent">Returned blood drained again over pump flow, mean over the breath.</param>
/// <param name="LowestPercent">Lowest share within the breath.</param>
/// <param name="HighestPercent">Highest share within the breath.</param>
/// <param name="ByContentPercent">As contents before and after the membrane lung and of native venous blood would tell it; null where the membrane lung hardly changes them.</param>
/// <param name="EffectiveFlowLPerMin">Pump flow less what recirculates.</param>
public sealed record RecirculationOutlook(
    double MeanPercent, double LowestPercent, double HighestPercent, double? ByContentPercent, double EffectiveFlowLPerMin);
