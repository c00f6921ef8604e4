namespace Cavaxis.Mechanics.Rods;

/// <summary>A straight piece of a rod between two nodes.</summary>
/// <param name="RestLengthMm">Length without force, mm.</param>
/// <param name="AxialStiffnessN">EA: force per strain, N.</param>
/// <param name="BendingStiffnessNMm2">EI: moment per curvature, N mm². Infinite for a piece held by a clamp.</param>
/// <param name="TorsionalStiffnessNMm2">GJ: torque per twist, N mm². Infinite for a piece held by a clamp.</param>
public readonly record struct RodEdge(
    double RestLengthMm, double AxialStiffnessN, double BendingStiffnessNMm2, double TorsionalStiffnessNMm2);
