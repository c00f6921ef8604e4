using Cavaxis.Anatomy.Space;

namespace Cavaxis.Mechanics.Walls;

/// <summary>What the model of one Newton step holds of the wall at one node: a plane.</summary>
/// <param name="IsKnown">Whether the plane is known.</param>
/// <param name="IsModelled">Whether the model holds its spring.</param>
/// <param name="DepthMm">Depth of the node in the wall before the step, by the plane, with that of its multiplier; negative
/// where the node lies off the wall.</param>
/// <param name="Outward">Gradient of the distance.</param>
internal readonly record struct Foreseen(bool IsKnown, bool IsModelled, double DepthMm, Vector3D Outward);
