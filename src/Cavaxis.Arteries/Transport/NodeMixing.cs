using Cavaxis.Arteries.Grid;
using Cavaxis.Arteries.Network;

namespace Cavaxis.Arteries.Transport;

/// <summary>
/// What happens to a tracer at a node: the blood that flows in mixes, every branch that flows out takes the mixture. The value at the end of an inflowing branch is
/// corrected to second order where all branches downstream agree in direction, so that cutting a vessel into pieces does not smear it.
/// </summary>
internal sealed class NodeMixing
{
    private readonly CellGrid grid;
    private readonly int[] first;
    private readonly int[] faces;
    private readonly int[] cells;
    private readonly int[] inner;
    private readonly int[] ghosts;
    private readonly double[] signs;
    private readonly double[] passing;

    public NodeMixing(CellGrid grid)
    {
        this.grid = grid;
        IReadOnlyList<SegmentEnd>[] nodes = [.. grid.Network.Branches.Where(static b => b.Count > 1)];
        SegmentEnd[] ends = [.. nodes.SelectMany(static b => b)];
        first = new int[nodes.Length + 1];
        for (int n = 0; n < nodes.Length; n++)
        {
            first[n + 1] = first[n] + nodes[n].Count;
        }

        faces = [.. ends.Select(grid.FaceOf)];
        cells = [.. ends.Select(grid.CellOf)];
        signs = [.. ends.Select(static e => e.IsDistal ? 1.0 : -1.0)];
        inner = [.. cells.Zip(signs, static (cell, sign) => cell - (int)sign)];
        ghosts = [.. cells.Zip(signs, static (cell, sign) => cell + (int)sign)];
        passing = new double[ends.Length];
    }

    /// <summary>Mixes at every node and fills the spare cells beside the ends with the mixture.</summary>
    public void Mix(double[] tracer, double[] area, double[] faceFlow, double timeStep)
    {
        for (int n = 0; n + 1 < first.Length; n++)
        {
            Mix(tracer, area, faceFlow, timeStep, first[n], first[n + 1]);
        }
    }

    /// <summary>Writes what passes the end faces.</summary>
    public void Pass(double[] target)
    {
        for (int e = 0; e < faces.Length; e++)
        {
            target[faces[e]] = passing[e];
        }
    }

    private void Mix(double[] tracer, double[] area, double[] faceFlow, double timeStep, int from, int to)
    {
        double flowIn = 0, amountIn = 0;
        for (int e = from; e < to; e++)
        {
            double inflow = signs[e] * faceFlow[faces[e]];
            if (inflow > 0)
            {
                int cell = cells[e];
                double here = tracer[cell];
                double share = inflow * timeStep * grid.PerDx[cell] / area[cell];
                double value = here + (0.5 * (1 - share) * TracerKernels.Superbee(here - tracer[inner[e]], Downstream(tracer, faceFlow, here, from, to)));
                flowIn += inflow;
                amountIn += inflow * value;
                passing[e] = signs[e] * inflow * value;
            }
        }

        bool flows = flowIn > 0;
        double mixed = flows ? amountIn / flowIn : 0;
        for (int e = from; e < to; e++)
        {
            double flow = faceFlow[faces[e]];
            tracer[ghosts[e]] = flows ? mixed : tracer[cells[e]];
            if (signs[e] * flow <= 0)
            {
                passing[e] = flow * mixed;
            }
        }
    }

    // The smallest difference to the branches downstream; none where they differ in direction.
    private double Downstream(double[] tracer, double[] faceFlow, double here, int from, int to)
    {
        double low = double.MaxValue, high = double.MinValue;
        for (int e = from; e < to; e++)
        {
            if (signs[e] * faceFlow[faces[e]] < 0)
            {
                double difference = tracer[cells[e]] - here;
                low = Math.Min(low, difference);
                high = Math.Max(high, difference);
            }
        }

        return low > 0 && low < double.MaxValue ? low : high < 0 && high > double.MinValue ? high : 0;
    }
}
