using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>Directions in the patient's coordinates, and turning from one towards another.</summary>
internal static class Directions
{
    /// <summary>To the patient's right.</summary>
    public static Vector3D Right { get; } = new(-1, 0, 0);

    /// <summary>To the patient's left.</summary>
    public static Vector3D Left { get; } = new(1, 0, 0);

    /// <summary>To the front.</summary>
    public static Vector3D Front { get; } = new(0, -1, 0);

    /// <summary>To the back.</summary>
    public static Vector3D Back { get; } = new(0, 1, 0);

    /// <summary>To the head.</summary>
    public static Vector3D Up { get; } = new(0, 0, 1);

    /// <summary>To the feet.</summary>
    public static Vector3D Down { get; } = new(0, 0, -1);

    /// <summary>A direction turned towards another.</summary>
    /// <param name="direction">Unit vector.</param>
    /// <param name="towards">Where to; not along the first.</param>
    /// <param name="angleDeg">How far, degrees.</param>
    /// <returns>Unit vector.</returns>
    public static Vector3D Turned(Vector3D direction, Vector3D towards, double angleDeg)
    {
        Vector3D square = (towards - (towards.Dot(direction) * direction)).Unit;
        (double sin, double cos) = Math.SinCos(angleDeg * Math.PI / 180);
        return (cos * direction) + (sin * square);
    }
}
