using System.Collections.Immutable;
using Cavaxis.Anatomy.Space;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Mechanics.Rods;

/// <summary>
/// Where a rod lies and how it is turned. The material frame of an edge is its reference director turned about the
/// tangent by the edge's angle; reference directors are carried along in time (Bergou et al. 2010).
/// </summary>
/// <param name="NodesMm">Places of the nodes, mm.</param>
/// <param name="AnglesRad">Angle of the material frame against the reference director, one for each edge, rad.</param>
/// <param name="Directors">Reference directors, one for each edge: unit vectors square to it.</param>
/// <param name="ReferenceTwistsRad">Twist of the reference directors at each node, rad; the ends hold zero.</param>
public sealed record RodState(
    ImmutableArray<Vector3D> NodesMm,
    ImmutableArray<double> AnglesRad,
    ImmutableArray<Vector3D> Directors,
    ImmutableArray<double> ReferenceTwistsRad)
{
    /// <summary>A rod along given points, without twist.</summary>
    /// <param name="nodesMm">Places of the nodes; no two neighbours the same.</param>
    /// <param name="firstDirector">Where the material frame of the first edge points, made square to it; any direction
    /// where not given.</param>
    /// <returns>The state; its reference directors are carried along the rod without turning.</returns>
    /// <exception cref="InputFaultException">Fewer than three nodes, or two in one place.</exception>
    public static RodState Along(IReadOnlyList<Vector3D> nodesMm, Vector3D? firstDirector = null)
    {
        ArgumentNullException.ThrowIfNull(nodesMm);
        Require.InRange(nodesMm.Count, RodChain.FewestEdges + 1, 100_001, "rod.nodesMm", "Give at least three nodes.");
        Vector3D[] directors = new Vector3D[nodesMm.Count - 1];
        Vector3D before = default;
        for (int i = 0; i < directors.Length; i++)
        {
            Vector3D edge = nodesMm[i + 1] - nodesMm[i];
            Require.InRange(edge.Length, 1e-9, 1e9, "rod.nodesMm", "Give neighbouring nodes different places.");
            Vector3D tangent = edge.Unit;
            directors[i] = i == 0
                ? firstDirector is Vector3D wanted ? FrameTransport.Square(wanted, tangent) : FrameTransport.AnySquareTo(tangent)
                : FrameTransport.Square(FrameTransport.Along(directors[i - 1], before, tangent), tangent);
            before = tangent;
        }

        return new RodState([.. nodesMm], [.. new double[directors.Length]], [.. directors], [.. new double[nodesMm.Count]]);
    }

    /// <summary>The same with other angles of the material frame.</summary>
    /// <param name="edge">Edge.</param>
    /// <param name="angleRad">Its new angle, rad.</param>
    /// <returns>The turned state; it is not at rest.</returns>
    public RodState WithAngle(int edge, double angleRad) => this with { AnglesRad = AnglesRad.SetItem(edge, angleRad) };

    /// <summary>Twist of the material frame over the whole rod, rad.</summary>
    public double TwistRad => AnglesRad[^1] - AnglesRad[0] + ReferenceTwistsRad.Sum();

    /// <summary>Turning angle of the tangent at a node, rad; zero at the ends.</summary>
    /// <param name="node">Node.</param>
    /// <returns>From 0 to π.</returns>
    public double TurningRad(int node)
    {
        if (node <= 0 || node >= NodesMm.Length - 1)
        {
            return 0;
        }

        Vector3D before = NodesMm[node] - NodesMm[node - 1];
        Vector3D after = NodesMm[node + 1] - NodesMm[node];
        return Math.Atan2(before.Cross(after).Length, before.Dot(after));
    }
}
