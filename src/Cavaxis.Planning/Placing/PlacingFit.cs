using Cavaxis.Quantities;

namespace Cavaxis.Planning.Placing;

/// <summary>How the cannulae of a plan fit the patient's axis when each is simply advanced to a depth and turned.</summary>
/// <param name="Cannulae">The cannulae that reach the axis.</param>
/// <param name="ProbabilityAllPortsInZone">Probability that every port lies in its zone and drainage and return are far enough apart.</param>
/// <param name="PortDistanceMm">From the return port to the tip of the draining cannula along the axis, as the rule of the least distance takes it; for a dual-lumen cannula to its nearest drainage hole. Null where no blood returns to a vein.</param>
/// <param name="LeastPortDistanceMm">Least distance that the rule asks for; null for a dual-lumen cannula, whose ports are fixed, and where no blood returns to a vein.</param>
public sealed record PlacingFit(
    IReadOnlyList<PlacedPorts> Cannulae, double ProbabilityAllPortsInZone, Estimate? PortDistanceMm, double? LeastPortDistanceMm);
