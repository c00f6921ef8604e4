using Cavaxis.Anatomy.Space;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Echo;

/// <summary>
/// Where the probe stands: the middle of its face, the way it looks, and its roll about that way. At roll 0 the picture's right lies as
/// near to the patient's head (z) as the way allows, or to the patient's left (x) where it looks along z.
/// </summary>
public sealed record ScanPlane
{
    /// <summary>A plane.</summary>
    /// <param name="origin">Middle of the face, mm.</param>
    /// <param name="direction">The way it looks; any length but zero.</param>
    /// <param name="rollDeg">Roll about the direction, degrees.</param>
    /// <exception cref="InputFaultException">The direction has no length, or a number is not finite.</exception>
    public ScanPlane(Vector3D origin, Vector3D direction, double rollDeg = 0)
    {
        const string Remedy = "Give a point and a direction with a length.";
        _ = Require.InRange(origin.Length, 0, 5000, "plane.origin", Remedy);
        _ = Require.InRange(direction.Length, 1e-6, 1e6, "plane.direction", Remedy);
        RollDeg = Require.InRange(rollDeg, -360, 360, "plane.rollDeg", Remedy);
        Origin = origin;
        Depth = direction.Unit;
        Vector3D wanted = Math.Abs(Depth.Z) < 0.9 ? new Vector3D(0, 0, 1) : new Vector3D(1, 0, 0);
        Vector3D level = (wanted - (wanted.Dot(Depth) * Depth)).Unit;
        Vector3D side = Depth.Cross(level);
        (double sin, double cos) = Math.SinCos(rollDeg * Math.PI / 180);
        Right = (cos * level) + (sin * side);
        Across = Depth.Cross(Right);
    }

    /// <summary>Middle of the probe's face, mm.</summary>
    public Vector3D Origin { get; }

    /// <summary>The way the probe looks, unit.</summary>
    public Vector3D Depth { get; }

    /// <summary>To the right of the picture, unit.</summary>
    public Vector3D Right { get; }

    /// <summary>Out of the picture's plane, unit.</summary>
    public Vector3D Across { get; }

    /// <summary>Roll, degrees.</summary>
    public double RollDeg { get; }

    /// <summary>A place in the plane's own coordinates.</summary>
    /// <param name="place">mm.</param>
    /// <returns>To the right, out of the plane, and depth below the middle of the face, mm.</returns>
    public (double X, double E, double Z) Within(Vector3D place)
    {
        Vector3D from = place - Origin;
        return (from.Dot(Right), from.Dot(Across), from.Dot(Depth));
    }

    /// <summary>The place of a point of the plane.</summary>
    /// <param name="x">To the right, mm.</param>
    /// <param name="z">Depth, mm.</param>
    /// <param name="e">Out of the plane, mm.</param>
    public Vector3D Place(double x, double z, double e = 0) => Origin + (x * Right) + (z * Depth) + (e * Across);

    /// <summary>The same plane moved.</summary>
    /// <param name="by">mm.</param>
    public ScanPlane Moved(Vector3D by) => new(Origin + by, Depth, RollDeg);
}
