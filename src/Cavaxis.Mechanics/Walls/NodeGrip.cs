using Cavaxis.Anatomy.Space;

namespace Cavaxis.Mechanics.Walls;

/// <summary>What the wall remembers of a node from the last rest: friction depends on the way that led here.</summary>
/// <param name="Anchor">Place from which the node slides, mm: where it stood, less the give of the contact.</param>
/// <param name="ForceN">Normal force at the last rest, N.</param>
/// <param name="Outward">Direction out of the lumen at the last rest.</param>
public readonly record struct NodeGrip(Vector3D Anchor, double ForceN, Vector3D Outward);
