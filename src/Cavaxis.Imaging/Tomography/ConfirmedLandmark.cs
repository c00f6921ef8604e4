using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Tomography;

/// <summary>A landmark that a person has pointed out on the pictures; it stands in place of the proposed one.</summary>
/// <param name="Landmark">Which one.</param>
/// <param name="Place">Where, mm; its level along the centreline is what counts.</param>
/// <param name="Edge">For a junction, the edge that was taken.</param>
public sealed record ConfirmedLandmark(CavalLandmark Landmark, Vector3D Place, JunctionEdge Edge = JunctionEdge.Unknown);
