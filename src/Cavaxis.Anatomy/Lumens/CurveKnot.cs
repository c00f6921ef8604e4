using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>One knot of a centreline.</summary>
/// <param name="ArcMm">Length along the curve, mm.</param>
/// <param name="Point">Place, mm.</param>
/// <param name="Tangent">Unit direction in which the length grows.</param>
internal readonly record struct CurveKnot(double ArcMm, Vector3D Point, Vector3D Tangent);
