using Cavaxis.Anatomy.Space;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Mechanics.Insertion;

/// <summary>Where and in which direction everything goes through the skin. Devices are clamped here; the way from here to
/// the vein is part of the lumen.</summary>
public sealed record Sleeve
{
    /// <summary>Makes a sleeve.</summary>
    /// <param name="pointMm">Place on the skin, mm.</param>
    /// <param name="direction">Direction into the body; made of length one.</param>
    /// <param name="guidedMm">Length behind the skin on which the wall is not felt, mm: for a tract that the lumen does not
    /// show wide enough.</param>
    /// <exception cref="InputFaultException">No direction, or a length out of range.</exception>
    public Sleeve(Vector3D pointMm, Vector3D direction, double guidedMm = 0)
    {
        Require.InRange(direction.Length, 1e-9, 1e9, "sleeve.direction", "Give a direction into the body.");
        GuidedMm = Require.InRange(guidedMm, 0, 200, "sleeve.guidedMm", "Give a length in mm.");
        (PointMm, Direction) = (pointMm, direction.Unit);
    }

    /// <summary>Place on the skin, mm.</summary>
    public Vector3D PointMm { get; }

    /// <summary>Direction into the body, of length one.</summary>
    public Vector3D Direction { get; }

    /// <summary>Length behind the skin on which the wall is not felt, mm.</summary>
    public double GuidedMm { get; }
}
