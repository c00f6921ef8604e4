using System.Collections.Immutable;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Meshes;

/// <summary>A surface of triangles in the patient's coordinates. Seen from outside, the corners of a triangle run against the clock.</summary>
public sealed class SurfaceMesh
{
    /// <summary>Builds it.</summary>
    /// <param name="pointsMm">Corners, mm.</param>
    /// <param name="outward">Unit vector out of the body at each corner.</param>
    /// <param name="corners">Three numbers of points for each triangle.</param>
    internal SurfaceMesh(ImmutableArray<Vector3D> pointsMm, ImmutableArray<Vector3D> outward, ImmutableArray<int> corners) =>
        (PointsMm, Outward, Corners) = (pointsMm, outward, corners);

    /// <summary>Corners, mm.</summary>
    public ImmutableArray<Vector3D> PointsMm { get; }

    /// <summary>Unit vector out of the body at each corner.</summary>
    public ImmutableArray<Vector3D> Outward { get; }

    /// <summary>Three numbers of points for each triangle.</summary>
    public ImmutableArray<int> Corners { get; }

    /// <summary>Number of triangles.</summary>
    public int TriangleCount => Corners.Length / 3;

    /// <summary>Area of all triangles, mm2.</summary>
    public double AreaMm2 => Sum(static (a, b, c) => 0.5 * (b - a).Cross(c - a).Length);

    /// <summary>Volume that a closed surface holds, mm3, by the theorem of Gauss: a sum of pyramids with their tops in the origin.</summary>
    public double VolumeMm3 => Sum(static (a, b, c) => a.Dot(b.Cross(c)) / 6);

    /// <summary>Points less edges plus triangles: 2 for each closed piece without a hole through it.</summary>
    public int EulerCharacteristic
    {
        get
        {
            HashSet<(int, int)> edges = [];
            HashSet<int> used = [];
            ForEachEdge((from, to) =>
            {
                edges.Add((Math.Min(from, to), Math.Max(from, to)));
                used.Add(from);
            });
            return used.Count - edges.Count + TriangleCount;
        }
    }

    /// <summary>True where every edge belongs to two triangles that run along it in opposite directions: the surface has no gap and one outside.</summary>
    public bool IsClosed
    {
        get
        {
            HashSet<(int, int)> directed = [];
            bool once = true;
            ForEachEdge((from, to) => once &= directed.Add((from, to)));
            bool paired = true;
            ForEachEdge((from, to) => paired &= directed.Contains((to, from)));
            return once && paired && TriangleCount > 0;
        }
    }

    private void ForEachEdge(Action<int, int> told)
    {
        for (int i = 0; i < Corners.Length; i += 3)
        {
            told(Corners[i], Corners[i + 1]);
            told(Corners[i + 1], Corners[i + 2]);
            told(Corners[i + 2], Corners[i]);
        }
    }

    private double Sum(Func<Vector3D, Vector3D, Vector3D, double> of)
    {
        double sum = 0;
        for (int i = 0; i < Corners.Length; i += 3)
        {
            sum += of(PointsMm[Corners[i]], PointsMm[Corners[i + 1]], PointsMm[Corners[i + 2]]);
        }

        return sum;
    }
}
