using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Tests.Meshes;

/// <summary>The inside of a sphere, whose area and volume everybody knows.</summary>
internal sealed record Ball(Vector3D MiddleMm, double RadiusMm) : ILumen
{
    public LumenPoint At(Vector3D point)
    {
        Vector3D away = point - MiddleMm;
        return new LumenPoint(away.Length - RadiusMm, away.Length > 0 ? away.Unit : new Vector3D(1, 0, 0));
    }
}
