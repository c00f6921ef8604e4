using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Quantities;

namespace Cavaxis.Imaging.Tips;

/// <summary>How far the tip lies from a landmark.</summary>
/// <param name="Landmark">The landmark.</param>
/// <param name="BelowMm">Along the axis, mm; positive towards the feet.</param>
public sealed record LandmarkDistance(CavalLandmark Landmark, Estimate BelowMm);
