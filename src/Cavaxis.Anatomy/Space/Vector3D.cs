namespace Cavaxis.Anatomy.Space;

/// <summary>
/// A point or a direction in the patient's own coordinates, as DICOM has them (PS3.3 C.7.6.2.1.1): x to the patient's
/// left, y to the back, z to the head. Points in mm; unit vectors have no unit.
/// </summary>
/// <param name="X">To the patient's left.</param>
/// <param name="Y">To the patient's back.</param>
/// <param name="Z">To the patient's head.</param>
public readonly record struct Vector3D(double X, double Y, double Z)
{
    /// <summary>The origin.</summary>
    public static Vector3D Zero => default;

    /// <summary>Square of the length.</summary>
    public double SquaredLength => (X * X) + (Y * Y) + (Z * Z);

    /// <summary>The length.</summary>
    public double Length => Math.Sqrt(SquaredLength);

    /// <summary>The direction of this vector; not a number where its length is zero.</summary>
    public Vector3D Unit => this / Length;

    /// <summary>Sum.</summary>
    /// <param name="left">First.</param>
    /// <param name="right">Second.</param>
    public static Vector3D operator +(Vector3D left, Vector3D right) =>
        new(left.X + right.X, left.Y + right.Y, left.Z + right.Z);

    /// <summary>Difference.</summary>
    /// <param name="left">First.</param>
    /// <param name="right">Second.</param>
    public static Vector3D operator -(Vector3D left, Vector3D right) =>
        new(left.X - right.X, left.Y - right.Y, left.Z - right.Z);

    /// <summary>The opposite.</summary>
    /// <param name="vector">The vector.</param>
    public static Vector3D operator -(Vector3D vector) => new(-vector.X, -vector.Y, -vector.Z);

    /// <summary>Stretched.</summary>
    /// <param name="factor">How many times as long.</param>
    /// <param name="vector">The vector.</param>
    public static Vector3D operator *(double factor, Vector3D vector) =>
        new(factor * vector.X, factor * vector.Y, factor * vector.Z);

    /// <summary>Shortened.</summary>
    /// <param name="vector">The vector.</param>
    /// <param name="divisor">How many times shorter.</param>
    public static Vector3D operator /(Vector3D vector, double divisor) => (1 / divisor) * vector;

    /// <summary>Inner product.</summary>
    /// <param name="other">The other vector.</param>
    /// <returns>The product of the lengths and the cosine between them.</returns>
    public double Dot(Vector3D other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>Vector product.</summary>
    /// <param name="other">The other vector.</param>
    /// <returns>Square to both, right-handed.</returns>
    public Vector3D Cross(Vector3D other) => new(
        (Y * other.Z) - (Z * other.Y),
        (Z * other.X) - (X * other.Z),
        (X * other.Y) - (Y * other.X));

    /// <summary>The three parts. (What the compiler would write prints <see cref="Unit"/> in itself, without end.)</summary>
    public override string ToString() => FormattableString.Invariant($"({X}, {Y}, {Z})");
}
