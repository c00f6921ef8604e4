using Cavaxis.Anatomy.Space;
using CsCheck;

namespace Cavaxis.Anatomy.Tests.Lumens;

/// <summary>A motion that keeps all lengths: a rotation about an axis through the origin and a shift, after a mirror across x where asked.</summary>
internal sealed record RigidMotion(Vector3D Axis, double AngleRad, Vector3D ShiftMm, bool Mirrors)
{
    public static Gen<RigidMotion> Any { get; } =
        from axis in LumenGen.Vector(1).Where(static v => v.Length > 0.1)
        from angle in Gen.Double[-Math.PI, Math.PI]
        from shift in LumenGen.Vector(300)
        from mirrors in Gen.Bool
        select new RigidMotion(axis.Unit, angle, shift, mirrors);

    /// <summary>A direction after the motion.</summary>
    public Vector3D Turn(Vector3D direction)
    {
        Vector3D v = Mirrors ? direction with { X = -direction.X } : direction;
        (double sin, double cos) = Math.SinCos(AngleRad);
        return (cos * v) + (sin * Axis.Cross(v)) + ((1 - cos) * Axis.Dot(v) * Axis);
    }

    /// <summary>A place after the motion.</summary>
    public Vector3D Place(Vector3D point) => Turn(point) + ShiftMm;
}
