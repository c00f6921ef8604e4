using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>Where a vein is entered through the skin.</summary>
/// <param name="PointMm">Middle of the puncture in the skin, mm.</param>
/// <param name="Inward">Unit direction of the tract into the body.</param>
/// <param name="TractMm">Length of the straight tract, mm.</param>
public readonly record struct SkinTract(Vector3D PointMm, Vector3D Inward, double TractMm);
