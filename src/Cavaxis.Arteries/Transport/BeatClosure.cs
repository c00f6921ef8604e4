using Cavaxis.Arteries.Grid;
using Cavaxis.Arteries.Network;

namespace Cavaxis.Arteries.Transport;

/// <summary>
/// A recorded beat ends almost, not exactly, where it began. The little that each cell and store gained is sent, as a flow that is constant over the beat, towards the
/// root (and out of the stores), so that the beat can be repeated for ever without any volume drifting.
/// </summary>
internal sealed class BeatClosure
{
    private readonly CellGrid grid;
    private readonly double[] faces;

    /// <summary>The flows that close a beat.</summary>
    /// <param name="grid">Grid.</param>
    /// <param name="gained">Area that each cell gained over the beat, m².</param>
    /// <param name="period">Length of the beat, s.</param>
    /// <param name="root">Index of the open node through which it leaves.</param>
    public BeatClosure(CellGrid grid, double[] gained, double period, int root)
    {
        this.grid = grid;
        faces = new double[grid.Length];
        foreach ((int segment, bool farIsDistal, bool closesLoop) in Enumerable.Reverse(OutwardOrder(root)))
        {
            ArterialSegment vessel = grid.Network.Segments[segment];
            int start = grid.Start[segment], end = start + grid.Count[segment];
            int far = grid.Network.NodeOf(farIsDistal ? vessel.DistalNode : vessel.ProximalNode);
            double inner = closesLoop ? 0 : Leaving(far, segment, farIsDistal);
            if (farIsDistal)
            {
                faces[end] = inner;
                for (int cell = end - 1; cell >= start; cell--)
                {
                    faces[cell] = faces[cell + 1] - (gained[cell] * grid.Dx[cell] / period);
                }
            }
            else
            {
                faces[start] = inner;
                for (int cell = start; cell < end; cell++)
                {
                    faces[cell + 1] = faces[cell] + (gained[cell] * grid.Dx[cell] / period);
                }
            }
        }
    }

    /// <summary>Adds the closing flow to the flow through every face.</summary>
    public void AddTo(double[] faceFlow)
    {
        for (int i = 0; i < faces.Length; i++)
        {
            faceFlow[i] += faces[i];
        }
    }

    /// <summary>Largest closing flow, m³/s.</summary>
    public double Largest => faces.Max(Math.Abs);

    // What the other branches of a node bring must leave through this segment's end.
    private double Leaving(int node, int segment, bool distal)
    {
        double brought = 0;
        foreach (SegmentEnd end in grid.Network.Branches[node])
        {
            if (end.Segment != segment || end.IsDistal != distal)
            {
                brought += (end.IsDistal ? 1 : -1) * faces[grid.FaceOf(end)];
            }
        }

        return distal ? -brought : brought;
    }

    private List<(int Segment, bool FarIsDistal, bool ClosesLoop)> OutwardOrder(int root)
    {
        List<(int, bool, bool)> order = [];
        HashSet<int> reached = [root], taken = [];
        Queue<int> waiting = new([root]);
        List<(int, bool, bool)> loops = [];
        while (waiting.TryDequeue(out int node))
        {
            foreach (SegmentEnd end in grid.Network.Branches[node])
            {
                if (!taken.Add(end.Segment))
                {
                    continue;
                }

                ArterialSegment vessel = grid.Network.Segments[end.Segment];
                int far = grid.Network.NodeOf(end.IsDistal ? vessel.ProximalNode : vessel.DistalNode);
                bool isNew = reached.Add(far);
                (isNew ? order : loops).Add((end.Segment, !end.IsDistal, !isNew));
                if (isNew)
                {
                    waiting.Enqueue(far);
                }
            }
        }

        // Reversed by the caller: segments that close a loop first, then from the leaves to the root.
        order.AddRange(loops);
        return order;
    }
}
