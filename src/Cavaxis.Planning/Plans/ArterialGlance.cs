using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>What the arterial tree says of a plan that returns to an artery, in one line.</summary>
/// <param name="MeetingInWords">Where blood of heart and pump meet, as part of a sentence.</param>
/// <param name="HalfCm">Where half is from each, from the aortic valve, cm, with the interval from what is uncertain; null where it lies nowhere in the aorta.</param>
/// <param name="HeartSaturationPercent">Saturation of the blood to the heart muscle, %.</param>
/// <param name="RightHandSaturationPercent">Saturation of the blood to the right hand, %.</param>
/// <param name="CannulatedLegInWords">How the leg below the cannula is supplied, as a sentence; empty where no leg holds one.</param>
/// <param name="LegFlowMlPerMin">Flow of that leg, mL/min; null where no leg holds a cannula.</param>
/// <param name="LegIsInWant">True where that leg gets less than it needs, its interval included.</param>
public sealed record ArterialGlance(
    string MeetingInWords,
    Estimate? HalfCm,
    Estimate HeartSaturationPercent,
    Estimate RightHandSaturationPercent,
    string CannulatedLegInWords,
    Estimate? LegFlowMlPerMin,
    bool LegIsInWant);
