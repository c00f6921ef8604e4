using System.Collections.Immutable;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Mechanics.Rods;

/// <summary>What a rod is without load: pieces, outer radii and natural curvature from its first node to its last.</summary>
public sealed record RodChain
{
    /// <summary>Fewest pieces of a rod.</summary>
    public const int FewestEdges = 2;

    /// <summary>Makes a chain.</summary>
    /// <param name="edges">Pieces; at least two.</param>
    /// <param name="radiiMm">Outer radius at each node, mm; one more than pieces.</param>
    /// <param name="natural">Natural curvature at each node; the ends are not used. Empty for a straight rod.</param>
    /// <exception cref="InputFaultException">A list of the wrong length or a number out of range.</exception>
    public RodChain(ImmutableArray<RodEdge> edges, ImmutableArray<double> radiiMm, ImmutableArray<NaturalCurvature> natural)
    {
        Require.InRange(edges.Length, FewestEdges, 100_000, "rod.edges", "Divide the rod into at least two pieces.");
        Require.InRange(radiiMm.Length, edges.Length + 1, edges.Length + 1, "rod.radiiMm", "Give one radius for each node.");
        Require.InRange(
            natural.IsEmpty ? edges.Length + 1 : natural.Length, edges.Length + 1, edges.Length + 1, "rod.natural", "Give one curvature for each node, or none.");
        foreach (RodEdge edge in edges)
        {
            Require.InRange(edge.RestLengthMm, 1e-6, 1e6, "rod.edge.restLengthMm", "Give a positive length.");
            Require.InRange(edge.AxialStiffnessN, 1e-9, 1e12, "rod.edge.axialStiffnessN", "Give a positive stiffness.");
            Require.InRange(edge.BendingStiffnessNMm2, 1e-9, double.PositiveInfinity, "rod.edge.bendingStiffnessNMm2", "Give a positive stiffness.");
            Require.InRange(edge.TorsionalStiffnessNMm2, 1e-9, double.PositiveInfinity, "rod.edge.torsionalStiffnessNMm2", "Give a positive stiffness.");
        }

        foreach (double radius in radiiMm)
        {
            Require.InRange(radius, 0, 1e3, "rod.radiiMm", "Give the outer radius in mm.");
        }

        (Edges, RadiiMm, Natural) = (edges, radiiMm, natural);
    }

    /// <summary>Pieces from the first node to the last.</summary>
    public ImmutableArray<RodEdge> Edges { get; }

    /// <summary>Outer radius at each node, mm.</summary>
    public ImmutableArray<double> RadiiMm { get; }

    /// <summary>Natural curvature at each node; empty for a straight rod.</summary>
    public ImmutableArray<NaturalCurvature> Natural { get; }

    /// <summary>Number of nodes.</summary>
    public int NodeCount => RadiiMm.Length;

    /// <summary>A rod that is alike along its whole length.</summary>
    /// <param name="edgeCount">Pieces.</param>
    /// <param name="lengthMm">Length of all of them, mm.</param>
    /// <param name="edge">Stiffness; its length is not used.</param>
    /// <param name="radiusMm">Outer radius, mm.</param>
    /// <returns>The chain.</returns>
    public static RodChain Uniform(int edgeCount, double lengthMm, RodEdge edge, double radiusMm) => new(
        [.. Enumerable.Repeat(edge with { RestLengthMm = lengthMm / edgeCount }, edgeCount)],
        [.. Enumerable.Repeat(radiusMm, edgeCount + 1)],
        []);

    /// <summary>
    /// The same rod with a rigid piece before its first node: the end of the rod is then clamped exactly at its own first
    /// node, with the accuracy of second order that the rest of the chain has.
    /// </summary>
    /// <returns>A chain of one piece more.</returns>
    public RodChain WithClampBefore() => new(
        Edges.Insert(0, Rigid(Edges[0])), RadiiMm.Insert(0, RadiiMm[0]), Natural.IsEmpty ? Natural : Natural.Insert(0, default));

    /// <summary>The same with a rigid piece after its last node.</summary>
    /// <returns>A chain of one piece more.</returns>
    public RodChain WithClampAfter() => new(
        Edges.Add(Rigid(Edges[^1])), RadiiMm.Add(RadiiMm[^1]), Natural.IsEmpty ? Natural : Natural.Add(default));

    private static RodEdge Rigid(RodEdge edge) =>
        edge with { BendingStiffnessNMm2 = double.PositiveInfinity, TorsionalStiffnessNMm2 = double.PositiveInfinity };
}
