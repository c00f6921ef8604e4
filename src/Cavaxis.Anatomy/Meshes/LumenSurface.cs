using System.Collections.Immutable;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Anatomy.Meshes;

/// <summary>
/// The wall of a lumen as triangles, by marching through the tetrahedra of a body-centred cubic lattice (Doi and Koide 1991 for tetrahedra;
/// Labelle and Shewchuk 2007 for this lattice; both from memory). A tetrahedron is cut in one way only, so the surface is closed by
/// construction; corners are moved along their edges onto the wall.
/// </summary>
public sealed class LumenSurface
{
    /// <summary>Finest spacing, mm.</summary>
    public const double FinestMm = 0.5;

    /// <summary>Coarsest spacing, mm.</summary>
    public const double CoarsestMm = 20;

    private const int BlockOfCubes = 6;

    private const int MostSteps = 40;

    private static readonly (int I, int J, int K, int L)[] Pairs = [(0, 1, 2, 3), (0, 2, 3, 1), (0, 3, 1, 2), (1, 2, 0, 3), (1, 3, 2, 0), (2, 3, 0, 1)];

    private static readonly (int I, int J, int K, int L)[] Singles = [(0, 1, 2, 3), (1, 0, 3, 2), (2, 3, 0, 1), (3, 2, 1, 0)];

    private readonly ILumen lumen;
    private readonly CentredLattice lattice;
    private readonly Dictionary<(int, int), int> onEdges = [];
    private readonly ImmutableArray<Vector3D>.Builder points = ImmutableArray.CreateBuilder<Vector3D>();
    private readonly ImmutableArray<int>.Builder corners = ImmutableArray.CreateBuilder<int>();

    private LumenSurface(ILumen lumen, CentredLattice lattice) => (this.lumen, this.lattice) = (lumen, lattice);

    /// <summary>The wall of a patient's lumen.</summary>
    /// <param name="lumen">The lumen.</param>
    /// <param name="spacingMm">Edge of the lattice's cubes, mm; <see cref="FinestMm"/> to <see cref="CoarsestMm"/>.</param>
    /// <returns>A closed surface.</returns>
    /// <exception cref="InputFaultException">The spacing is out of range.</exception>
    public static SurfaceMesh Of(CavalLumen lumen, double spacingMm)
    {
        ArgumentNullException.ThrowIfNull(lumen);
        Vector3D reach = lumen.Joined.BlendMm / 4 * new Vector3D(1, 1, 1);
        return Of(
            lumen,
            lumen.Joined.Parts.Select(static p => p.Low).Aggregate(static (a, b) => new Vector3D(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z))) - reach,
            lumen.Joined.Parts.Select(static p => p.High).Aggregate(static (a, b) => new Vector3D(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z))) + reach,
            spacingMm);
    }

    /// <summary>The wall of any lumen within a box.</summary>
    /// <param name="lumen">The lumen.</param>
    /// <param name="low">Lowest corner of a box that holds it, mm.</param>
    /// <param name="high">Highest corner of that box, mm.</param>
    /// <param name="spacingMm">Edge of the lattice's cubes, mm; <see cref="FinestMm"/> to <see cref="CoarsestMm"/>.</param>
    /// <returns>A closed surface.</returns>
    /// <exception cref="InputFaultException">The spacing is out of range.</exception>
    public static SurfaceMesh Of(ILumen lumen, Vector3D low, Vector3D high, double spacingMm)
    {
        ArgumentNullException.ThrowIfNull(lumen);
        Require.InRange(spacingMm, FinestMm, CoarsestMm, "spacingMm", "Give a spacing of the surface in this range.");
        LumenSurface surface = new(lumen, new CentredLattice(lumen, low, high, spacingMm));
        surface.March();
        return new SurfaceMesh(surface.points.ToImmutable(), [.. surface.points.Select(p => lumen.At(p).Outward.Unit)], surface.corners.ToImmutable());
    }

    private void March()
    {
        for (int z = 0; z < lattice.CountZ; z += BlockOfCubes)
        {
            for (int y = 0; y < lattice.CountY; y += BlockOfCubes)
            {
                for (int x = 0; x < lattice.CountX; x += BlockOfCubes)
                {
                    (int X, int Y, int Z) to = (Math.Min(x + BlockOfCubes, lattice.CountX), Math.Min(y + BlockOfCubes, lattice.CountY), Math.Min(z + BlockOfCubes, lattice.CountZ));
                    if (lattice.MayHoldWall((x, y, z), to))
                    {
                        Block((x, y, z), to);
                    }
                }
            }
        }
    }

    private void Block((int X, int Y, int Z) from, (int X, int Y, int Z) to)
    {
        for (int z = from.Z; z < to.Z; z++)
        {
            for (int y = from.Y; y < to.Y; y++)
            {
                for (int x = from.X; x < to.X; x++)
                {
                    // Each cube owns the faces towards left, back and head. The four corners of each run against the clock seen along the axis.
                    int middle = lattice.Middle(x, y, z);
                    if (x + 1 < lattice.CountX)
                    {
                        Face(middle, lattice.Middle(x + 1, y, z), [lattice.Corner(x + 1, y, z), lattice.Corner(x + 1, y + 1, z), lattice.Corner(x + 1, y + 1, z + 1), lattice.Corner(x + 1, y, z + 1)]);
                    }

                    if (y + 1 < lattice.CountY)
                    {
                        Face(middle, lattice.Middle(x, y + 1, z), [lattice.Corner(x, y + 1, z), lattice.Corner(x, y + 1, z + 1), lattice.Corner(x + 1, y + 1, z + 1), lattice.Corner(x + 1, y + 1, z)]);
                    }

                    if (z + 1 < lattice.CountZ)
                    {
                        Face(middle, lattice.Middle(x, y, z + 1), [lattice.Corner(x, y, z + 1), lattice.Corner(x + 1, y, z + 1), lattice.Corner(x + 1, y + 1, z + 1), lattice.Corner(x, y + 1, z + 1)]);
                    }
                }
            }
        }
    }

    private void Face(int first, int second, ReadOnlySpan<int> around)
    {
        Span<int> tetrahedron = stackalloc int[4];
        for (int i = 0; i < 4; i++)
        {
            (tetrahedron[0], tetrahedron[1], tetrahedron[2], tetrahedron[3]) = (first, second, around[i], around[(i + 1) % 4]);
            Cut(tetrahedron);
        }
    }

    /// <summary>Cuts a tetrahedron whose corners 1, 2, 3 are right-handed seen from corner 0.</summary>
    private void Cut(ReadOnlySpan<int> t)
    {
        int inside = 0;
        for (int i = 0; i < 4; i++)
        {
            inside |= lattice.DistanceMm(t[i]) < 0 ? 1 << i : 0;
        }

        switch (int.PopCount(inside))
        {
            case 1:
                (int i, int j, int k, int l) = Singles[int.TrailingZeroCount(inside)];
                Triangle(OnEdge(t[i], t[j]), OnEdge(t[i], t[k]), OnEdge(t[i], t[l]));
                break;
            case 2:
                (i, j, k, l) = Pairs[Array.FindIndex(Pairs, p => (1 << p.I | 1 << p.J) == inside)];
                (int a, int b, int c, int d) = (OnEdge(t[i], t[k]), OnEdge(t[i], t[l]), OnEdge(t[j], t[l]), OnEdge(t[j], t[k]));
                Triangle(a, b, c);
                Triangle(a, c, d);
                break;
            case 3:
                (i, j, k, l) = Singles[int.TrailingZeroCount(~inside & 15)];
                Triangle(OnEdge(t[i], t[k]), OnEdge(t[i], t[j]), OnEdge(t[i], t[l]));
                break;
            default:
                break;
        }
    }

    private void Triangle(int a, int b, int c)
    {
        corners.Add(a);
        corners.Add(b);
        corners.Add(c);
    }

    private int OnEdge(int a, int b)
    {
        (int from, int to) key = a < b ? (a, b) : (b, a);
        if (!onEdges.TryGetValue(key, out int index))
        {
            index = points.Count;
            points.Add(Crossing(key.from, key.to));
            onEdges.Add(key, index);
        }

        return index;
    }

    /// <summary>Where the wall crosses an edge: false position with the Illinois rule, which keeps the crossing between both ends.</summary>
    private Vector3D Crossing(int from, int to)
    {
        (Vector3D a, Vector3D b) = (lattice.PlaceOf(from), lattice.PlaceOf(to));
        (double atA, double atB) = (lattice.DistanceMm(from), lattice.DistanceMm(to));
        (double low, double high) = (0, 1);
        double share = 0.5;
        int kept = 0;
        for (int i = 0; i < MostSteps; i++)
        {
            share = low + ((high - low) * (atA / (atA - atB)));
            double at = lumen.At(a + (share * (b - a))).DistanceMm;
            if (Math.Abs(at) < 1e-6)
            {
                break;
            }

            if (at < 0 == atA < 0)
            {
                (low, atA, atB, kept) = (share, at, kept > 0 ? atB * 0.5 : atB, 1);
            }
            else
            {
                (high, atB, atA, kept) = (share, at, kept < 0 ? atA * 0.5 : atA, -1);
            }
        }

        return a + (share * (b - a));
    }
}
