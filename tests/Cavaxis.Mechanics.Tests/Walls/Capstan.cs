using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Mechanics.Tests.Walls;

/// <summary>The space outside a cylinder about the z axis.</summary>
internal sealed record Capstan(double RadiusMm) : ILumen
{
    public LumenPoint At(Vector3D point)
    {
        double rho = Math.Sqrt((point.X * point.X) + (point.Y * point.Y));
        return new LumenPoint(RadiusMm - rho, new Vector3D(-point.X / rho, -point.Y / rho, 0));
    }
}
