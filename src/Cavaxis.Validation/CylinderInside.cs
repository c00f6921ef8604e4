using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Validation;

/// <summary>The inside of a cylinder about the x axis.</summary>
/// <param name="RadiusMm">Radius, mm.</param>
internal sealed record CylinderInside(double RadiusMm) : ILumen
{
    /// <inheritdoc/>
    public LumenPoint At(Vector3D point)
    {
        double rho = Math.Sqrt((point.Y * point.Y) + (point.Z * point.Z));
        return new LumenPoint(rho - RadiusMm, rho > 0 ? new Vector3D(0, point.Y / rho, point.Z / rho) : new Vector3D(0, 0, 1));
    }
}
