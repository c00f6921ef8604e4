using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Meshes;

/// <summary>
/// The points of a body-centred cubic lattice around a lumen: corners of cubes and, after them, their middles. The distance from the wall
/// is asked at a point only when it is needed, and then once.
/// </summary>
internal sealed class CentredLattice
{
    private readonly ILumen lumen;
    private readonly Vector3D low;
    private readonly double spacing;
    private readonly int corners;
    private readonly double[] distances;

    /// <summary>Lays the lattice.</summary>
    /// <param name="lumen">The lumen.</param>
    /// <param name="low">Lowest corner of the box to be covered, mm.</param>
    /// <param name="high">Highest corner, mm.</param>
    /// <param name="spacingMm">Edge of a cube, mm.</param>
    public CentredLattice(ILumen lumen, Vector3D low, Vector3D high, double spacingMm)
    {
        (this.lumen, spacing) = (lumen, spacingMm);

        // A cube and a half around the box: the wall then never reaches the outermost cubes.
        this.low = low - (1.5 * spacingMm * new Vector3D(1, 1, 1));
        (CountX, CountY, CountZ) = (Count(high.X - this.low.X), Count(high.Y - this.low.Y), Count(high.Z - this.low.Z));
        corners = (CountX + 1) * (CountY + 1) * (CountZ + 1);
        distances = new double[corners + (CountX * CountY * CountZ)];
        Array.Fill(distances, double.NaN);
    }

    /// <summary>Cubes from right to left.</summary>
    public int CountX { get; }

    /// <summary>Cubes from front to back.</summary>
    public int CountY { get; }

    /// <summary>Cubes from foot to head.</summary>
    public int CountZ { get; }

    /// <summary>Number of a corner.</summary>
    public int Corner(int x, int y, int z) => (((z * (CountY + 1)) + y) * (CountX + 1)) + x;

    /// <summary>Number of the middle of a cube.</summary>
    public int Middle(int x, int y, int z) => corners + (((z * CountY) + y) * CountX) + x;

    /// <summary>Place of a point.</summary>
    public Vector3D PlaceOf(int point)
    {
        bool isCorner = point < corners;
        int rest = isCorner ? point : point - corners;
        (int acrossX, int acrossY) = isCorner ? (CountX + 1, CountY + 1) : (CountX, CountY);
        double half = isCorner ? 0 : 0.5;
        return low + (spacing * new Vector3D(rest % acrossX + half, rest / acrossX % acrossY + half, rest / (acrossX * acrossY) + half));
    }

    /// <summary>Signed distance from the wall at a point, mm.</summary>
    public double DistanceMm(int point)
    {
        if (double.IsNaN(distances[point]))
        {
            distances[point] = lumen.At(PlaceOf(point)).DistanceMm;
        }

        return distances[point];
    }

    /// <summary>True where the wall may pass through the cubes from one to another, seen from the middle of them.</summary>
    /// <param name="from">First cube.</param>
    /// <param name="to">Last cube, not with it.</param>
    public bool MayHoldWall((int X, int Y, int Z) from, (int X, int Y, int Z) to)
    {
        Vector3D a = low + (spacing * new Vector3D(from.X, from.Y, from.Z));
        Vector3D b = low + (spacing * new Vector3D(to.X, to.Y, to.Z));

        // The distance grows by at most 1 + r' for each mm; radii of the lumens change by less than a third along their lines.
        return Math.Abs(lumen.At(0.5 * (a + b)).DistanceMm) < 1.4 * (0.5 * (b - a).Length + spacing);
    }

    private int Count(double lengthMm) => (int)Math.Ceiling(lengthMm / spacing) + 2;
}
