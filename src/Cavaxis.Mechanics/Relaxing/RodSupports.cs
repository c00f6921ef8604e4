using System.Collections.Immutable;

namespace Cavaxis.Mechanics.Relaxing;

/// <summary>Which coordinates and angles of a rod are held where they stand.</summary>
public sealed record RodSupports
{
    private readonly ImmutableArray<bool> held;

    private RodSupports(ImmutableArray<bool> held) => this.held = held;

    /// <summary>Four entries for each node: x, y, z, and the angle of the edge that begins there.</summary>
    public ReadOnlySpan<bool> Held => held.AsSpan();

    /// <summary>Nothing is held.</summary>
    /// <param name="nodeCount">Number of nodes.</param>
    /// <returns>The supports.</returns>
    public static RodSupports None(int nodeCount) => new([.. new bool[4 * nodeCount]]);

    /// <summary>Also holds a node.</summary>
    /// <param name="node">Node.</param>
    /// <returns>The supports.</returns>
    public RodSupports WithNode(int node) => WithNode(node, true, true, true);

    /// <summary>Also holds coordinates of a node.</summary>
    /// <param name="node">Node.</param>
    /// <param name="x">Whether x is held.</param>
    /// <param name="y">Whether y is held.</param>
    /// <param name="z">Whether z is held.</param>
    /// <returns>The supports.</returns>
    public RodSupports WithNode(int node, bool x, bool y, bool z)
    {
        ImmutableArray<bool>.Builder next = held.ToBuilder();
        next[4 * node] |= x;
        next[(4 * node) + 1] |= y;
        next[(4 * node) + 2] |= z;
        return new RodSupports(next.ToImmutable());
    }

    /// <summary>Also holds the angle of an edge.</summary>
    /// <param name="edge">Edge.</param>
    /// <returns>The supports.</returns>
    public RodSupports WithAngle(int edge) => new(held.SetItem((4 * edge) + 3, true));

    /// <summary>Also holds an edge: its two nodes and its angle.</summary>
    /// <param name="edge">Edge.</param>
    /// <returns>The supports.</returns>
    public RodSupports WithClampedEdge(int edge) => WithNode(edge).WithNode(edge + 1).WithAngle(edge);
}
