using Cavaxis.Arteries.Network;

namespace Cavaxis.Arteries.Grid;

/// <summary>
/// The cells of all segments in one row, so that one loop runs over the whole tree. Each segment has one spare cell in front and one behind; there
/// the loops compute what nobody reads. Face j lies between the cells j − 1 and j, so that a segment's end faces are its own.
/// </summary>
internal sealed class CellGrid
{
    /// <summary>First cell that loops touch, and a multiple of the width of every vector.</summary>
    public const int First = 8;

    public CellGrid(ArterialNetwork network, double cellLength, int fewestCells)
    {
        Network = network;
        int segments = network.Segments.Count;
        Start = new int[segments];
        Count = new int[segments];
        int at = First;
        for (int s = 0; s < segments; s++)
        {
            Count[s] = Math.Max(fewestCells, (int)Math.Ceiling((network.Segments[s].Length / cellLength) - 1e-9));
            Start[s] = at + 1;
            at += Count[s] + 2;
        }

        // One face more than cells, and the last vector whole.
        End = (at + 1 + 7) / 8 * 8;
        Length = End + 8;
        Dx = new double[Length];
        PerDx = new double[Length];
        RootReference = new double[Length];
        Stiffness = new double[Length];
        Softness = new double[Length];
        Offset = new double[Length];
        RootSlope = new double[Length];
        StiffnessSlope = new double[Length];
        FaceStiffness = new double[Length];
        FaceSoftness = new double[Length];
        FaceOffset = new double[Length];
        FaceWallDamping = new double[Length];
        for (int s = 0; s < segments; s++)
        {
            Lay(network.Segments[s], Start[s], Count[s]);
        }

        for (int i = 0; i < Length; i++)
        {
            if (Dx[i] == 0)
            {
                Copy(Math.Clamp(i, Start[0], Start[^1] + Count[^1] - 1), i);
            }
        }
    }

    /// <summary>The vessels.</summary>
    public ArterialNetwork Network { get; }

    /// <summary>First cell of each segment.</summary>
    public int[] Start { get; }

    /// <summary>Cells of each segment.</summary>
    public int[] Count { get; }

    /// <summary>One behind the last cell that loops touch.</summary>
    public int End { get; }

    /// <summary>Length of the arrays.</summary>
    public int Length { get; }

    /// <summary>Length of a cell, m.</summary>
    public double[] Dx { get; }

    /// <summary>One over it.</summary>
    public double[] PerDx { get; }

    /// <summary>√Wref in the middle of a cell, m.</summary>
    public double[] RootReference { get; }

    /// <summary>K in the middle of a cell, Pa/m.</summary>
    public double[] Stiffness { get; }

    /// <summary>1/K in the middle of a cell, m/Pa.</summary>
    public double[] Softness { get; }

    /// <summary>Pref − K √Wref in the middle of a cell, Pa.</summary>
    public double[] Offset { get; }

    /// <summary>Change of √Wref along the vessel, 1.</summary>
    public double[] RootSlope { get; }

    /// <summary>Relative change of K along the vessel, 1/m.</summary>
    public double[] StiffnessSlope { get; }

    /// <summary>K at a face, Pa/m.</summary>
    public double[] FaceStiffness { get; }

    /// <summary>1/K at a face, m/Pa.</summary>
    public double[] FaceSoftness { get; }

    /// <summary>Pref − K √Wref at a face, Pa.</summary>
    public double[] FaceOffset { get; }

    /// <summary>(2/3) √π φ h / Wref at a face, Pa·s/m²: with −∂Q/∂x over √W the pressure of the wall's viscosity.</summary>
    public double[] FaceWallDamping { get; }

    /// <summary>Face at an end of a segment.</summary>
    public int FaceOf(SegmentEnd end) => Start[end.Segment] + (end.IsDistal ? Count[end.Segment] : 0);

    /// <summary>Cell at an end of a segment.</summary>
    public int CellOf(SegmentEnd end) => Start[end.Segment] + (end.IsDistal ? Count[end.Segment] - 1 : 0);

    /// <summary>Cell that a place lies in.</summary>
    public int CellAt(NetworkPlace place)
    {
        int segment = Network.Locate(place);
        int cell = (int)(place.Distance / Network.Segments[segment].Length * Count[segment]);
        return Start[segment] + Math.Min(cell, Count[segment] - 1);
    }

    /// <summary>All cells, without the spare ones.</summary>
    public IEnumerable<int> Cells() => Enumerable.Range(0, Count.Length).SelectMany(s => Enumerable.Range(Start[s], Count[s]));

    private void Lay(ArterialSegment segment, int start, int count)
    {
        double wallSlope = (segment.DistalWall - segment.ProximalWall) / segment.Length;
        double radiusSlope = (segment.DistalRadius - segment.ProximalRadius) / segment.Length;
        for (int i = 0; i < count; i++)
        {
            double fraction = (i + 0.5) / count;
            int cell = start + i;
            Dx[cell] = segment.Length / count;
            PerDx[cell] = count / segment.Length;
            Stiffness[cell] = segment.Stiffness(fraction);
            Softness[cell] = 1 / Stiffness[cell];
            RootReference[cell] = Math.Sqrt(Math.PI) * segment.Radius(fraction);
            Offset[cell] = segment.ReferencePressure - (Stiffness[cell] * RootReference[cell]);
            RootSlope[cell] = Math.Sqrt(Math.PI) * radiusSlope;
            StiffnessSlope[cell] = (wallSlope / segment.Wall(fraction)) - (2 * radiusSlope / segment.Radius(fraction));
        }

        for (int i = 0; i <= count; i++)
        {
            double fraction = (double)i / count;
            double radius = segment.Radius(fraction);
            int face = start + i;
            FaceStiffness[face] = segment.Stiffness(fraction);
            FaceSoftness[face] = 1 / FaceStiffness[face];
            FaceOffset[face] = segment.ReferencePressure - (FaceStiffness[face] * Math.Sqrt(Math.PI) * radius);
            FaceWallDamping[face] = 2.0 / 3 * Math.Sqrt(Math.PI) * segment.WallViscosity * segment.Wall(fraction) / TubeLaw.Area(radius);
        }
    }

    private void Copy(int from, int to)
    {
        // A spare cell behind a segment takes after it; one in front of the next takes after that: either keeps every number finite.
        for (int near = to; near >= First; near--)
        {
            if (PerDx[near] != 0)
            {
                from = near;
                break;
            }
        }

        Dx[to] = Dx[from];
        PerDx[to] = PerDx[from];
        Stiffness[to] = Stiffness[from];
        Softness[to] = Softness[from];
        RootReference[to] = RootReference[from];
        Offset[to] = Offset[from];
        RootSlope[to] = RootSlope[from];
        StiffnessSlope[to] = StiffnessSlope[from];
        if (FaceStiffness[to] == 0)
        {
            FaceStiffness[to] = FaceStiffness[from];
            FaceSoftness[to] = FaceSoftness[from];
            FaceOffset[to] = FaceOffset[from];
        }
    }
}
