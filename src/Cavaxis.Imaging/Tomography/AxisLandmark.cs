using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Tomography;

/// <summary>A landmark on a traced centreline.</summary>
/// <param name="Landmark">Which one.</param>
/// <param name="Origin">Where it comes from.</param>
/// <param name="ArcMm">Length along the centreline from its upper end, mm; not a number where it was not found.</param>
/// <param name="SdMm">Error along the line as a standard deviation, mm.</param>
/// <param name="Place">Where it lies, mm.</param>
/// <param name="Edge">For a junction, the edge that was taken.</param>
/// <param name="Reason">How it was found, or why not.</param>
public sealed record AxisLandmark(
    CavalLandmark Landmark, LandmarkOrigin Origin, double ArcMm, double SdMm, Vector3D Place, JunctionEdge Edge, string Reason)
{
    /// <summary>True where it has a place.</summary>
    public bool IsThere => Origin != LandmarkOrigin.NotFound;

    /// <summary>One that was not found.</summary>
    /// <param name="landmark">Which one.</param>
    /// <param name="reason">Why not.</param>
    internal static AxisLandmark Missing(CavalLandmark landmark, string reason) =>
        new(landmark, LandmarkOrigin.NotFound, double.NaN, double.NaN, Vector3D.Zero, JunctionEdge.Unknown, reason);
}
