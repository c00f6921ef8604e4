using Cavaxis.Anatomy.Space;

namespace Cavaxis.Mechanics.Walls;

/// <summary>Force between the wall and one node.</summary>
/// <param name="Node">Node of the rod.</param>
/// <param name="NormalN">Normal force, N.</param>
/// <param name="OnRodN">Force of the wall on the rod, normal and friction together, N.</param>
/// <param name="PenetrationMm">Depth of the node's outer surface in the wall, mm; negative where it lies off the wall.</param>
/// <param name="Slides">True where the friction is fully used.</param>
public readonly record struct NodeContact(int Node, double NormalN, Vector3D OnRodN, double PenetrationMm, bool Slides);
