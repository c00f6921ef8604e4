using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>How a cannula fits this patient's axis.</summary>
/// <param name="PlannedDepthCm">Depth from the skin at which most sampled anatomies have every port in its zone; the interval holds nine tenths of the depths that suit single anatomies.</param>
/// <param name="ProbabilityWithImaging">Probability that some depth exists at which every port lies in its zone, to be found under imaging.</param>
/// <param name="ProbabilityAtPlannedDepth">Probability that every port lies in its zone when the cannula is simply advanced to the planned depth.</param>
/// <param name="LimitingRule">Zone rule that most often cannot be met, or null when none ever fails.</param>
/// <param name="LimitingReason">In words, with numbers, why it fails.</param>
/// <param name="DeepestReachableCm">Insertable length less the length left outside.</param>
/// <param name="Ports">Positions of tip and ports at the planned depth.</param>
/// <param name="RotationWindowDeg">Half width of the rotation within which the return jet still enters the tricuspid annulus; null for cannulae without a side jet.</param>
public sealed record CannulaFit(
    Estimate PlannedDepthCm,
    double ProbabilityWithImaging,
    double ProbabilityAtPlannedDepth,
    string? LimitingRule,
    string LimitingReason,
    double DeepestReachableCm,
    IReadOnlyList<PortPosition> Ports,
    Estimate? RotationWindowDeg);
