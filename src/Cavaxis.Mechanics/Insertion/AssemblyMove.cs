using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Mechanics.Walls;

namespace Cavaxis.Mechanics.Insertion;

/// <summary>
/// One small movement at the skin as a task for the solver. The centreline keeps its place, and a moved device slides
/// along it: the tip goes straight on. Friction begins where each piece of device stood before.
/// </summary>
/// <param name="Kit">Devices.</param>
/// <param name="Sleeve">Skin.</param>
/// <param name="Lumen">Wall.</param>
/// <param name="Settings">Spacing and tolerances.</param>
internal sealed record AssemblyMove(InsertionKit Kit, Sleeve Sleeve, ILumen Lumen, InsertionSettings Settings)
{
    /// <summary>The task and the lengths from the skin to its nodes.</summary>
    /// <param name="before">Assembly at rest.</param>
    /// <param name="depths">Depths after the movement; at least one spacing deep.</param>
    /// <param name="rotationRad">Turn at the skin after the movement.</param>
    public (RelaxationTask Task, ImmutableArray<double> Arcs) To(InsertedAssembly before, InsertedDepths depths, double rotationRad)
    {
        ImmutableArray<double> arcs = AssemblyChain.Arcs(depths.DeepestMm, Settings.SpacingMm);
        RodChain chain = AssemblyChain.Of(Kit, depths, arcs);
        ImmutableArray<double> frictions = AssemblyChain.Frictions(Kit, depths, arcs);
        Vector3D[] nodes = Places(before, chain, arcs);
        RodState state = Framed(before, nodes).WithAngle(0, rotationRad);
        RodSupports supports = RodSupports.None(arcs.Length).WithClampedEdge(0);
        int first = 0;
        while (first < arcs.Length && arcs[first] <= Sleeve.GuidedMm)
        {
            first++;
        }

        RelaxationTask task = new(chain, state, supports)
        {
            Wall = new Wall(Lumen, 0),
            Frictions = frictions,
            Grips = Grips(before, depths, arcs, nodes),
            FirstTouching = first,
        };
        return (task, arcs);
    }

    private Vector3D OnSleeve(double arc) => Sleeve.PointMm + (arc * Sleeve.Direction);

    private Vector3D PlaceOf(InsertedAssembly before, double arc) => before.Rod is null || arc <= 0 ? OnSleeve(arc) : before.PlaceAt(arc);

    private Vector3D[] Places(InsertedAssembly before, RodChain chain, ImmutableArray<double> arcs)
    {
        Vector3D[] nodes = new Vector3D[arcs.Length];
        for (int i = 0; i < nodes.Length; i++)
        {
            nodes[i] = PlaceOf(before, arcs[i]);
            if (before.Rod is null || arcs[i] <= before.Depths.DeepestMm || arcs[i] <= Sleeve.GuidedMm)
            {
                continue;
            }

            // A tip that would go into the wall starts along it, at its own distance from the node before.
            LumenPoint at = Lumen.At(nodes[i]);
            double depth = at.DistanceMm + chain.RadiiMm[i];
            Vector3D aside = nodes[i] - (Math.Min(Math.Max(depth, 0), 0.5 * Settings.SpacingMm) * at.Outward);
            nodes[i] = nodes[i - 1] + ((arcs[i] - arcs[i - 1]) * (aside - nodes[i - 1]).Unit);
        }

        return nodes;
    }

    /// <summary>Reference directors are those of the same pieces of the centreline; new ones are carried on without turning.</summary>
    private static RodState Framed(InsertedAssembly before, Vector3D[] nodes)
    {
        RodState fresh = RodState.Along(nodes);
        if (before.Rod is not RodState old)
        {
            return fresh;
        }

        int count = nodes.Length - 1;
        Vector3D[] directors = new Vector3D[count];
        double[] angles = new double[count];
        double[] twists = new double[nodes.Length];
        for (int j = 0; j < count; j++)
        {
            bool known = j < old.Directors.Length;
            angles[j] = known ? old.AnglesRad[j] : angles[j - 1];
            Vector3D tangent = (nodes[j + 1] - nodes[j]).Unit;
            directors[j] = known
                ? FrameTransport.Square(old.Directors[j], tangent)
                : FrameTransport.Square(FrameTransport.Along(directors[j - 1], (nodes[j] - nodes[j - 1]).Unit, tangent), tangent);
            twists[j] = known ? old.ReferenceTwistsRad[j] : 0;
        }

        twists[0] = 0;
        return new RodState([.. nodes], [.. angles], [.. directors], [.. twists]);
    }

    private ImmutableArray<NodeGrip> Grips(InsertedAssembly before, InsertedDepths depths, ImmutableArray<double> arcs, Vector3D[] nodes)
    {
        NodeGrip[] grips = new NodeGrip[nodes.Length];
        for (int i = 0; i < nodes.Length; i++)
        {
            bool known = i < before.Grips.Length;
            Device device = depths.OutermostAt(arcs[i]);
            double from = arcs[i] - (depths.Of(device) - before.Depths.Of(device));
            grips[i] = new NodeGrip(
                PlaceOf(before, from) - Trail(before, from, device),
                known ? before.Grips[i].ForceN : 0,
                known ? before.Grips[i].Outward : Lumen.At(nodes[i]).Outward.Unit);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(grips);
    }

    /// <summary>How far the anchor of a piece of device trailed behind it at rest.</summary>
    private static Vector3D Trail(InsertedAssembly before, double arc, Device device)
    {
        if (before.Rod is null || arc <= 0 || arc > before.Depths.DeepestMm || before.Depths.OutermostAt(arc) != device)
        {
            return default;
        }

        (int node, double share) = before.Between(arc);
        Vector3D first = before.Rod.NodesMm[node] - before.Grips[node].Anchor;
        Vector3D second = before.Rod.NodesMm[node + 1] - before.Grips[node + 1].Anchor;
        return first + (share * (second - first));
    }
}
