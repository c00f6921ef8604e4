using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tips;

/// <summary>Where the feature was seen: its distance from a landmark on the picture.</summary>
public sealed record SeenDistance
{
    /// <summary>A distance.</summary>
    /// <param name="landmark">The landmark, seen on the same picture; not the skin.</param>
    /// <param name="towardsFeet">True where the feature lies on the side of the feet.</param>
    /// <param name="measuredMm">The distance on the picture, mm, with its error.</param>
    /// <param name="way">How it was measured.</param>
    /// <param name="tilt">How far the line leans out of the plane; null for the usual.</param>
    /// <param name="edge">Which edge was taken as the landmark, at a cavo-atrial junction.</param>
    /// <exception cref="InputFaultException">The landmark is the skin, the distance is out of range, or the edge belongs to another junction.</exception>
    public SeenDistance(CavalLandmark landmark, bool towardsFeet, Estimate measuredMm, DistanceWay way, PlaneTilt? tilt = null, JunctionEdge edge = JunctionEdge.Unknown)
    {
        ArgumentNullException.ThrowIfNull(measuredMm);
        if (landmark is CavalLandmark.RightNeckSkin or CavalLandmark.LeftNeckSkin or CavalLandmark.RightGroinSkin or CavalLandmark.LeftGroinSkin)
        {
            throw new InputFaultException(new InputFault(FaultCode.NotAChoice, "landmark", landmark.ToString(), "a landmark inside the body", "A depth at the skin is given as such."));
        }

        if (landmark == CavalLandmark.Scaj)
        {
            _ = JunctionEdges.Superior(edge);
        }
        else if (landmark == CavalLandmark.Icaj)
        {
            _ = JunctionEdges.Inferior(edge);
        }

        _ = Require.InRange(measuredMm.Value, 0, 300, "seen.measuredMm", "Give the distance in mm without sign, and the side.");
        (Landmark, TowardsFeet, MeasuredMm, Way) = (landmark, towardsFeet, measuredMm, way);
        (Tilt, Edge) = (tilt ?? PlaneTilt.Usual, edge);
    }

    /// <summary>The landmark.</summary>
    public CavalLandmark Landmark { get; }

    /// <summary>True where the feature lies on the side of the feet.</summary>
    public bool TowardsFeet { get; }

    /// <summary>The distance on the picture, mm.</summary>
    public Estimate MeasuredMm { get; }

    /// <summary>How it was measured.</summary>
    public DistanceWay Way { get; }

    /// <summary>How far the line leans out of the plane.</summary>
    public PlaneTilt Tilt { get; }

    /// <summary>Which edge was taken as the junction.</summary>
    public JunctionEdge Edge { get; }
}
