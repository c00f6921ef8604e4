using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Tomography;

/// <summary>A bright round patch on one level of a coarse grid.</summary>
/// <param name="Level">Level from the feet.</param>
/// <param name="Middle">Its middle, mm.</param>
/// <param name="MeanHu">Its mean, HU.</param>
/// <param name="AreaMm2">Its area, mm².</param>
internal sealed record BrightBlob(int Level, Vector3D Middle, double MeanHu, double AreaMm2);
