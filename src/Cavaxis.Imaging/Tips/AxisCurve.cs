using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Tips;

/// <summary>
/// The axis near the atrium in space: the stiff way between the junctions, and straight on along its end tangents beyond them. Coordinates of its own: along the chord,
/// frontal, sagittal; only distances are used.
/// </summary>
/// <param name="axis">The anatomy.</param>
internal sealed class AxisCurve(CavalAxis axis)
{
    private const int Halvings = 48;

    private readonly AtrialPath path = axis.Atrium;

    /// <summary>Length of the stiff way, mm.</summary>
    public double AtriumMm => path.TotalLengthMm;

    /// <summary>Length of the straight way, mm.</summary>
    public double ChordMm => path.SpanMm;

    /// <summary>Place at a length along the axis.</summary>
    /// <param name="z">mm below the SCAJ.</param>
    /// <returns>mm.</returns>
    public Vector3D At(double z)
    {
        if (z <= 0)
        {
            return z * Tangent(0);
        }

        double end = path.TotalLengthMm;
        if (z >= end)
        {
            return new Vector3D(path.SpanMm, 0, 0) + ((z - end) * Tangent(1));
        }

        double low = 0;
        double high = 1;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = path.ArcMm(middle) < z ? (middle, high) : (low, middle);
        }

        double t = (low + high) / 2;
        (double frontal, double sagittal) = path.BesideChordMm(t);
        return new Vector3D(t * path.SpanMm, frontal, sagittal);
    }

    /// <summary>The place along the axis that lies a straight distance from another.</summary>
    /// <param name="from">mm below the SCAJ.</param>
    /// <param name="straightMm">Straight distance, not negative.</param>
    /// <param name="towardsFeet">On which side.</param>
    /// <returns>mm below the SCAJ.</returns>
    public double AtStraight(double from, double straightMm, bool towardsFeet)
    {
        double way = towardsFeet ? 1 : -1;
        Vector3D origin = At(from);
        double low = 0;
        double high = (2 * straightMm) + 1;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = (At(from + (way * middle)) - origin).Length < straightMm ? (middle, high) : (low, middle);
        }

        return from + (way * (low + high) / 2);
    }

    /// <summary>Moves along a device that takes more or less length through the atrium than the axis.</summary>
    /// <param name="z">Where it starts, mm below the SCAJ.</param>
    /// <param name="deviceMm">Length along the device, positive towards the feet.</param>
    /// <param name="ratio">Length of the device's way through the atrium over that of the axis.</param>
    /// <returns>mm below the SCAJ.</returns>
    public double Along(double z, double deviceMm, double ratio)
    {
        double atrium = AtriumMm;
        double stretched = ratio * atrium;
        double at = z <= 0 ? z : z < atrium ? ratio * z : stretched + z - atrium;
        double to = at + deviceMm;
        return to <= 0 ? to : to < stretched ? to / ratio : atrium + to - stretched;
    }

    private Vector3D Tangent(double t)
    {
        (double frontal, double sagittal) = path.SlopesAt(t);
        return new Vector3D(1, frontal, sagittal).Unit;
    }
}
