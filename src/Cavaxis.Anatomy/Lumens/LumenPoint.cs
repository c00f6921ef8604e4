using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>What a lumen says about one point.</summary>
/// <param name="DistanceMm">Signed distance from the wall, mm: negative in the blood, positive in the tissue.</param>
/// <param name="Outward">Gradient of that distance: out of the lumen, of length 1 up to the error of the blend between
/// parts.</param>
public readonly record struct LumenPoint(double DistanceMm, Vector3D Outward);
