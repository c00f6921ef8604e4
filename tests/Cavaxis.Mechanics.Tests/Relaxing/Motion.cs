using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;
using CsCheck;

namespace Cavaxis.Mechanics.Tests.Relaxing;

/// <summary>A rigid motion: a rotation about an axis through the origin and a shift.</summary>
internal sealed record Motion(Vector3D Axis, double Angle, Vector3D Shift)
{
    public static Gen<Motion> Any { get; } =
        from axis in Rods.RodGen.Vector(1).Where(static v => v.Length > 0.1)
        from angle in Gen.Double[-3, 3]
        from shift in Rods.RodGen.Vector(200)
        select new Motion(axis.Unit, angle, shift);

    public Vector3D Turn(Vector3D v) =>
        (Math.Cos(Angle) * v) + (Math.Sin(Angle) * Axis.Cross(v)) + ((1 - Math.Cos(Angle)) * Axis.Dot(v) * Axis);

    public Vector3D Place(Vector3D v) => Turn(v) + Shift;

    public ILumen Of(ILumen lumen) => new Moved(lumen, this, this with { Angle = -Angle, Shift = default });

    private sealed record Moved(ILumen Lumen, Motion Motion, Motion Back) : ILumen
    {
        public LumenPoint At(Vector3D point)
        {
            LumenPoint at = Lumen.At(Back.Turn(point - Motion.Shift));
            return at with { Outward = Motion.Turn(at.Outward) };
        }
    }
}
