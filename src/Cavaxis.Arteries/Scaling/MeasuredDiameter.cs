using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Scaling;

/// <summary>A measured inner diameter, with its own error.</summary>
/// <param name="Artery">Which artery.</param>
/// <param name="DiameterMm">Inner diameter, mm.</param>
public sealed record MeasuredDiameter(AccessArtery Artery, Estimate DiameterMm);
