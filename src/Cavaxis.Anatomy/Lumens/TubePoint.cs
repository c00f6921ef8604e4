using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>What a tube says about one point.</summary>
/// <param name="DistanceMm">Signed distance from its wall, mm; negative inside.</param>
/// <param name="Outward">Gradient of that distance.</param>
/// <param name="ArcMm">Where along the centreline the nearest point lies, mm.</param>
public readonly record struct TubePoint(double DistanceMm, Vector3D Outward, double ArcMm);
