namespace Cavaxis.Arteries.Solver;

/// <summary>A place at which values are read, between the middles of two cells or a half cell beyond the last one (straight line).</summary>
public readonly record struct ArterialProbe
{
    internal ArterialProbe(int segment, int cell, double share) => (Segment, Cell, Share) = (segment, cell, share);

    /// <summary>Index of the segment.</summary>
    public int Segment { get; }

    internal int Cell { get; }

    internal double Share { get; }

    internal double Of(double[] values) => values[Cell] + (Share * (values[Cell + 1] - values[Cell]));
}
