namespace Cavaxis.Mechanics.Rods;

/// <summary>
/// Curvature of a rod without moment, in its material frame. The signs are those of Bergou et al. 2010: κ₁ = κb·m₂,
/// κ₂ = −κb·m₁, so that a positive first part bends the rod towards its first director.
/// </summary>
/// <param name="FirstPerMm">κ₁, 1/mm.</param>
/// <param name="SecondPerMm">κ₂, 1/mm.</param>
public readonly record struct NaturalCurvature(double FirstPerMm, double SecondPerMm);
