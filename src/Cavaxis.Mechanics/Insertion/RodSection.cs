namespace Cavaxis.Mechanics.Insertion;

/// <summary>A stretch of a wire, introducer or cannula of one stiffness; its radius may taper.</summary>
/// <param name="LengthMm">Length, mm.</param>
/// <param name="BendingStiffnessNMm2">EI, N mm².</param>
/// <param name="TorsionalStiffnessNMm2">GJ, N mm².</param>
/// <param name="TipSideRadiusMm">Outer radius at the end towards the tip, mm.</param>
/// <param name="FarSideRadiusMm">Outer radius at the other end, mm.</param>
public readonly record struct RodSection(
    double LengthMm, double BendingStiffnessNMm2, double TorsionalStiffnessNMm2, double TipSideRadiusMm, double FarSideRadiusMm)
{
    /// <summary>Curvature without moment, 1/mm, in the plane of the first director, such as that of a J tip.</summary>
    public double NaturalCurvaturePerMm { get; init; }
}
