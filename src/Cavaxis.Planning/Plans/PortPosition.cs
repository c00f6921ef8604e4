using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>Where one port of a cannula comes to lie at the planned depth.</summary>
/// <param name="Port">Name of the port; "tip" for the tip itself.</param>
/// <param name="RuleId">Zone rule that the port is held against.</param>
/// <param name="BelowScajMm">Position along the axis, mm below the superior cavo-atrial junction (negative above).</param>
/// <param name="ZoneFromMm">Upper bound of the zone, mm below the superior junction.</param>
/// <param name="ZoneToMm">Lower bound of the zone, mm below the superior junction.</param>
/// <param name="ProbabilityInZone">Probability that the port lies in its zone at the planned depth.</param>
public sealed record PortPosition(
    string Port, string RuleId, Estimate BelowScajMm, Estimate ZoneFromMm, Estimate ZoneToMm, double ProbabilityInZone);
