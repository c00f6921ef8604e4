namespace Cavaxis.Planning.Plans;

/// <summary>Share of the flow through one hole group.</summary>
/// <param name="Port">Name of the hole group.</param>
/// <param name="Share">Fraction of the lumen's flow, 0 to 1.</param>
public sealed record HoleShare(string Port, double Share);
