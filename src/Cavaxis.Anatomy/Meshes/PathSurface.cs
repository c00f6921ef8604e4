using System.Collections.Immutable;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Meshes;

/// <summary>A wire or a cannula as a round tube of triangles along its path, closed at both ends.</summary>
public static class PathSurface
{
    /// <summary>The tube.</summary>
    /// <param name="pathMm">Points of its middle line, at least two that differ, mm.</param>
    /// <param name="radiusMm">Radius, mm.</param>
    /// <param name="sides">Sides of its section, at least three.</param>
    /// <returns>A closed surface.</returns>
    /// <exception cref="ArgumentException">The path has no length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not above zero, or there are fewer than three sides.</exception>
    public static SurfaceMesh Of(IReadOnlyList<Vector3D> pathMm, double radiusMm, int sides)
    {
        ArgumentNullException.ThrowIfNull(pathMm);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(radiusMm);
        ArgumentOutOfRangeException.ThrowIfLessThan(sides, 3);
        Vector3D[] path = [.. pathMm.Where((p, i) => i == 0 || (p - pathMm[i - 1]).Length > 1e-9)];
        if (path.Length < 2)
        {
            throw new ArgumentException("A path needs two points that differ.", nameof(pathMm));
        }

        ImmutableArray<Vector3D>.Builder points = ImmutableArray.CreateBuilder<Vector3D>();
        ImmutableArray<Vector3D>.Builder outward = ImmutableArray.CreateBuilder<Vector3D>();
        ImmutableArray<int>.Builder corners = ImmutableArray.CreateBuilder<int>();
        Vector3D tangent = (path[1] - path[0]).Unit;
        Vector3D across = tangent.Cross(Math.Abs(tangent.Z) < 0.9 ? new Vector3D(0, 0, 1) : new Vector3D(1, 0, 0)).Unit;
        for (int ring = 0; ring < path.Length; ring++)
        {
            tangent = (path[Math.Min(ring + 1, path.Length - 1)] - path[Math.Max(ring - 1, 0)]).Unit;
            across = (across - (across.Dot(tangent) * tangent)).Unit;
            Vector3D other = tangent.Cross(across);
            for (int side = 0; side < sides; side++)
            {
                (double sin, double cos) = Math.SinCos(2 * Math.PI * side / sides);
                Vector3D away = (cos * across) + (sin * other);
                points.Add(path[ring] + (radiusMm * away));
                outward.Add(away);
            }
        }

        for (int ring = 0; ring + 1 < path.Length; ring++)
        {
            for (int side = 0; side < sides; side++)
            {
                (int a, int b) = ((ring * sides) + side, (ring * sides) + ((side + 1) % sides));
                Add(a, b, b + sides);
                Add(a, b + sides, a + sides);
            }
        }

        Cap(0, -1);
        Cap(path.Length - 1, 1);
        return new SurfaceMesh(points.ToImmutable(), outward.ToImmutable(), corners.ToImmutable());

        void Add(int a, int b, int c)
        {
            corners.Add(a);
            corners.Add(b);
            corners.Add(c);
        }

        void Cap(int ring, int sign)
        {
            int middle = points.Count;
            points.Add(path[ring]);
            outward.Add(sign * (ring == 0 ? path[1] - path[0] : path[^1] - path[^2]).Unit);
            for (int side = 0; side < sides; side++)
            {
                (int a, int b) = ((ring * sides) + side, (ring * sides) + ((side + 1) % sides));
                Add(middle, sign > 0 ? a : b, sign > 0 ? b : a);
            }
        }
    }
}
