using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Imaging.Tomography;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>A landmark on a traced axis.</summary>
/// <param name="Landmark">Which one.</param>
/// <param name="Origin">Proposed, confirmed or not found.</param>
/// <param name="ArcMm">Length along the centreline from its upper end, mm; null where it was not found.</param>
/// <param name="SdMm">Error along the line, mm.</param>
/// <param name="XMm">To the patient's left, mm.</param>
/// <param name="YMm">To the back, mm.</param>
/// <param name="ZMm">To the head, mm.</param>
/// <param name="Edge">Edge that was taken.</param>
/// <param name="Reason">How it was found, or why not.</param>
public sealed record AxisLandmarkRow(
    CavalLandmark Landmark, LandmarkOrigin Origin, double? ArcMm, double? SdMm, double? XMm, double? YMm, double? ZMm, JunctionEdge Edge, string Reason)
{
    /// <summary>Of a landmark.</summary>
    /// <param name="landmark">The landmark.</param>
    internal static AxisLandmarkRow Of(AxisLandmark landmark) => landmark.IsThere
        ? new(landmark.Landmark, landmark.Origin, landmark.ArcMm, landmark.SdMm, landmark.Place.X, landmark.Place.Y, landmark.Place.Z, landmark.Edge, landmark.Reason)
        : new(landmark.Landmark, landmark.Origin, null, null, null, null, null, landmark.Edge, landmark.Reason);
}
