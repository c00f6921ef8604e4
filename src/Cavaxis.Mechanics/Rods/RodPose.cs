using Cavaxis.Anatomy.Space;

namespace Cavaxis.Mechanics.Rods;

/// <summary>A state in arrays that are written over: the solver's current and trial states.</summary>
internal sealed class RodPose
{
    /// <summary>Places of the nodes, mm.</summary>
    public Vector3D[] Nodes { get; private set; } = [];

    /// <summary>Angles of the material frames, rad.</summary>
    public double[] Angles { get; private set; } = [];

    /// <summary>Unit tangents of the edges.</summary>
    public Vector3D[] Tangents { get; private set; } = [];

    /// <summary>Lengths of the edges, mm.</summary>
    public double[] Lengths { get; private set; } = [];

    /// <summary>Reference directors of the edges.</summary>
    public Vector3D[] Directors { get; private set; } = [];

    /// <summary>Reference twist at the nodes, rad.</summary>
    public double[] Twists { get; private set; } = [];

    /// <summary>Number of nodes.</summary>
    public int Count { get; private set; }

    /// <summary>Takes a state; directors are made square to the edges, and the reference twists renewed.</summary>
    public void Load(RodState state)
    {
        Size(state.NodesMm.Length);
        state.NodesMm.CopyTo(Nodes);
        state.AnglesRad.CopyTo(Angles);
        state.Directors.CopyTo(Directors);
        state.ReferenceTwistsRad.CopyTo(Twists);
        for (int j = 0; j < Count - 1; j++)
        {
            Measure(j);
            Directors[j] = FrameTransport.Square(Directors[j], Tangents[j]);
        }

        RenewTwists(Twists);
    }

    /// <summary>The state as an immutable record.</summary>
    public RodState Save() => new(
        [.. Nodes.AsSpan(0, Count)], [.. Angles.AsSpan(0, Count - 1)], [.. Directors.AsSpan(0, Count - 1)], [.. Twists.AsSpan(0, Count)]);

    /// <summary>Becomes another pose moved along a direction; reference directors are carried over in time.</summary>
    /// <param name="from">Pose to start from; not this one.</param>
    /// <param name="direction">Three coordinates and an angle for each node.</param>
    /// <param name="share">How much of the direction.</param>
    /// <param name="turnsEdges">
    /// Whether edges are turned rather than sheared: each keeps its length to second order, and the nodes follow from the
    /// first one. That spares a nearly inextensible rod the stretch of every finite step; it moves nodes to second order,
    /// so all but the first ones must be free.
    /// </param>
    public void Follow(RodPose from, double[] direction, double share, bool turnsEdges)
    {
        Size(from.Count);
        for (int i = 0; i < Count; i++)
        {
            Nodes[i] = from.Nodes[i] + (share * At(direction, i));
        }

        for (int j = 0; j < Count - 1; j++)
        {
            Angles[j] = from.Angles[j] + (share * direction[(4 * j) + 3]);
            if (turnsEdges)
            {
                Turn(j, from, share * (At(direction, j + 1) - At(direction, j)));
            }

            Measure(j);
            Directors[j] = FrameTransport.Square(FrameTransport.Along(from.Directors[j], from.Tangents[j], Tangents[j]), Tangents[j]);
        }

        RenewTwists(from.Twists);
    }

    private static Vector3D At(double[] direction, int node) => new(direction[4 * node], direction[(4 * node) + 1], direction[(4 * node) + 2]);

    private void Turn(int edge, RodPose from, Vector3D change)
    {
        double longer = change.Dot(from.Tangents[edge]);
        Vector3D turned = (from.Lengths[edge] * from.Tangents[edge]) + change;
        Nodes[edge + 1] = Nodes[edge] + (Math.Max(from.Lengths[edge] + longer, 0.1 * from.Lengths[edge]) * turned.Unit);
    }

    private void Measure(int edge)
    {
        Vector3D along = Nodes[edge + 1] - Nodes[edge];
        Lengths[edge] = along.Length;
        Tangents[edge] = along / Lengths[edge];
    }

    private void RenewTwists(double[] near)
    {
        Twists[0] = 0;
        Twists[Count - 1] = 0;
        for (int i = 1; i < Count - 1; i++)
        {
            Twists[i] = FrameTransport.ReferenceTwist(Directors[i - 1], Tangents[i - 1], Directors[i], Tangents[i], near[i]);
        }
    }

    private void Size(int count)
    {
        Count = count;
        if (Nodes.Length < count)
        {
            int room = count + 32;
            Nodes = new Vector3D[room];
            Angles = new double[room];
            Tangents = new Vector3D[room];
            Lengths = new double[room];
            Directors = new Vector3D[room];
            Twists = new double[room];
        }
    }
}
