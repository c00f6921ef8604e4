using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Validation;

/// <summary>The space outside a cylinder about the z axis.</summary>
/// <param name="RadiusMm">Radius, mm.</param>
internal sealed record CylinderOutside(double RadiusMm) : ILumen
{
    /// <inheritdoc/>
    public LumenPoint At(Vector3D point)
    {
        double rho = Math.Sqrt((point.X * point.X) + (point.Y * point.Y));
        return new LumenPoint(RadiusMm - rho, rho > 0 ? new Vector3D(-point.X / rho, -point.Y / rho, 0) : new Vector3D(1, 0, 0));
    }
}
