using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>
/// The line from the superior to the inferior junction in space, with the way of <see cref="AtrialPath"/> beside it. The bisector of the two
/// caval axes is vertical; the chord leans against it by φ = asin(offset/span) to the patient's right.
/// </summary>
internal sealed class Chord
{
    private readonly AtrialPath path;
    private readonly Vector3D down;
    private readonly Vector3D right;

    /// <summary>Lays it.</summary>
    /// <param name="shape">The anatomy.</param>
    /// <param name="path">The way through the atrium.</param>
    public Chord(LumenShape shape, AtrialPath path)
    {
        this.path = path;
        double lean = Math.Asin(shape[AxisDimension.MouthOffset] / path.SpanMm);
        (double sin, double cos) = Math.SinCos(lean);
        down = (sin * Directions.Right) + (cos * Directions.Down);
        right = (cos * Directions.Right) - (sin * Directions.Down);
    }

    /// <summary>Unit vector from the superior to the inferior junction.</summary>
    public Vector3D Down => down;

    /// <summary>Place on the straight line.</summary>
    /// <param name="fraction">0 at the superior, 1 at the inferior junction.</param>
    /// <returns>mm.</returns>
    public Vector3D StraightAt(double fraction) => fraction * path.SpanMm * down;

    /// <summary>Place on the way of a stiff cannula.</summary>
    /// <param name="fraction">0 at the superior, 1 at the inferior junction.</param>
    /// <returns>mm.</returns>
    public Vector3D PointAt(double fraction)
    {
        (double frontal, double sagittal) = path.BesideChordMm(fraction);
        return StraightAt(fraction) + (frontal * right) + (sagittal * Directions.Back);
    }

    /// <summary>Direction of that way, towards the feet.</summary>
    /// <param name="fraction">0 at the superior, 1 at the inferior junction.</param>
    /// <returns>Unit vector.</returns>
    public Vector3D DirectionAt(double fraction)
    {
        (double frontal, double sagittal) = path.SlopesAt(fraction);
        return (down + (frontal * right) + (sagittal * Directions.Back)).Unit;
    }
}
