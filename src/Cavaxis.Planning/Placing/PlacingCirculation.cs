using Cavaxis.Quantities;

namespace Cavaxis.Planning.Placing;

/// <summary>What the model of the circulation computes for cannulae at a depth and a turn. Estimates are median and 90 % interval of the patients.</summary>
/// <param name="Members">Patients who came to rest.</param>
/// <param name="RecirculationPercent">Returned blood drained again, over pump flow; null with return to an artery alone.</param>
/// <param name="RightArmSaturationPercent">Saturation of right arm, coronaries and right brain; null where <paramref name="Note"/> says why.</param>
/// <param name="DeliveryToConsumption">Oxygen delivery over consumption; null likewise.</param>
/// <param name="Note">Why there are no numbers; empty where there are.</param>
public sealed record PlacingCirculation(
    int Members, Estimate? RecirculationPercent, Estimate? RightArmSaturationPercent, Estimate? DeliveryToConsumption, string Note);
