using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Grid;
using Cavaxis.Arteries.Network;

namespace Cavaxis.Arteries.Transport;

/// <summary>
/// The tracers that the blood carries: in the cells, in the stores of ends and side tubes, and the amount that has entered from outside. A step takes flows
/// that the solver has just found, or that were stored, and conserves every amount.
/// </summary>
internal sealed class TracerField
{
    private readonly CellGrid grid;
    private readonly NodeMixing nodes;
    private readonly EndSpecification[] ends;
    private readonly int[] endFaces;
    private readonly int[] endCells;
    private readonly int[] endGhosts;
    private readonly double[] endSigns;
    private readonly ISideFlow[] sides;
    private readonly int[] sideFirst;
    private readonly int[] sideCells;
    private readonly double[][] values;
    private readonly double[][] endAmounts;
    private readonly double[][] sideAmounts;
    private readonly double[] endVolumes;
    private readonly double[] entered;
    private readonly double[] passing;
    private readonly double[] endPassing;

    public TracerField(CellGrid grid, IReadOnlyList<EndSpecification> ends, IReadOnlyList<ISideFlow> sides, IReadOnlyList<double> initial)
    {
        this.grid = grid;
        this.ends = [.. ends];
        this.sides = [.. sides];
        nodes = new NodeMixing(grid);
        SegmentEnd[] at = [.. ends.Select(e => grid.Network.Branches[grid.Network.NodeOf(e.Node)][0])];
        endFaces = [.. at.Select(grid.FaceOf)];
        endCells = [.. at.Select(grid.CellOf)];
        endSigns = [.. at.Select(static e => e.IsDistal ? 1.0 : -1.0)];
        endGhosts = [.. endCells.Zip(endSigns, static (cell, sign) => cell + (int)sign)];
        sideFirst = new int[sides.Count + 1];
        for (int f = 0; f < sides.Count; f++)
        {
            sideFirst[f + 1] = sideFirst[f] + sides[f].Places.Count;
        }

        sideCells = [.. sides.SelectMany(static f => f.Places).Select(grid.CellAt)];
        endVolumes = [.. ends.Select(static e => e.Condition.StoredVolume)];
        values = [.. initial.Select(c => Filled(grid.Length, c))];
        endAmounts = [.. initial.Select(c => endVolumes.Select(v => v * c).ToArray())];
        sideAmounts = [.. initial.Select(c => sides.Select(f => f.Blood is null ? c * f.StoreVolume : 0).ToArray())];
        entered = new double[initial.Count];
        passing = new double[grid.Length];
        endPassing = new double[endFaces.Length];
    }

    /// <summary>A copy that goes on by itself.</summary>
    public TracerField(TracerField other)
    {
        grid = other.grid;
        nodes = new NodeMixing(grid);
        (ends, endFaces, endCells, endSigns, endGhosts) = (other.ends, other.endFaces, other.endCells, other.endSigns, other.endGhosts);
        (sides, sideFirst, sideCells) = (other.sides, other.sideFirst, other.sideCells);
        values = [.. other.values.Select(static v => (double[])v.Clone())];
        endAmounts = [.. other.endAmounts.Select(static v => (double[])v.Clone())];
        sideAmounts = [.. other.sideAmounts.Select(static v => (double[])v.Clone())];
        endVolumes = [.. other.endVolumes];
        entered = [.. other.entered];
        passing = new double[grid.Length];
        endPassing = new double[endFaces.Length];
    }

    /// <summary>Number of tracers.</summary>
    public int Count => values.Length;

    /// <summary>Concentration of a tracer in every cell.</summary>
    public double[] Of(int tracer) => values[tracer];

    /// <summary>Amount of a tracer that has entered from outside, less what has left.</summary>
    public double Entered(int tracer) => entered[tracer];

    /// <summary>Amount of a tracer in the stores.</summary>
    public double Stored(int tracer)
    {
        double sum = 0;
        foreach (double amount in endAmounts[tracer])
        {
            sum += amount;
        }

        foreach (double amount in sideAmounts[tracer])
        {
            sum += amount;
        }

        return sum;
    }

    /// <summary>Concentration in the store of an end; what the vessel holds there where it has none.</summary>
    public double AtEnd(int end, int tracer) => endVolumes[end] > 0 ? endAmounts[tracer][end] / endVolumes[end] : values[tracer][endCells[end]];

    /// <summary>Carries every tracer over one step.</summary>
    /// <param name="area">Area at the start of the step, m².</param>
    /// <param name="faceFlow">Flow through the faces, m³/s.</param>
    /// <param name="onward">Flow onward from the stores of the ends, m³/s.</param>
    /// <param name="sideFlows">Flow into the network at each place of the side flows, m³/s.</param>
    /// <param name="middle">Middle of the step, s.</param>
    /// <param name="timeStep">Step, s.</param>
    public void Step(double[] area, double[] faceFlow, ReadOnlySpan<double> onward, ReadOnlySpan<double> sideFlows, double middle, double timeStep)
    {
        for (int k = 0; k < values.Length; k++)
        {
            double[] c = values[k];
            nodes.Mix(c, area, faceFlow, timeStep);
            Ends(k, faceFlow, onward, middle, timeStep);
            TracerKernels.Passing(grid, c, area, faceFlow, timeStep, passing);
            nodes.Pass(passing);
            for (int e = 0; e < endFaces.Length; e++)
            {
                passing[endFaces[e]] = endPassing[e];
            }

            TracerKernels.Update(grid, c, area, faceFlow, passing, timeStep);
            Sides(k, area, faceFlow, sideFlows, middle, timeStep);
        }

        for (int e = 0; e < ends.Length; e++)
        {
            if (endVolumes[e] > 0)
            {
                endVolumes[e] += timeStep * ((endSigns[e] * faceFlow[endFaces[e]]) - onward[e]);
            }
        }
    }

    private static double[] Filled(int length, double value)
    {
        double[] filled = new double[length];
        Array.Fill(filled, value);
        return filled;
    }

    private void Ends(int tracer, double[] faceFlow, ReadOnlySpan<double> onward, double middle, double timeStep)
    {
        double[] c = values[tracer];
        for (int e = 0; e < ends.Length; e++)
        {
            double flow = faceFlow[endFaces[e]];
            double flowOut = endSigns[e] * flow;
            bool stores = endVolumes[e] > 0;
            double inside = c[endCells[e]];
            double outside = stores ? endAmounts[tracer][e] / endVolumes[e] : ends[e].Blood?.Concentration(tracer, middle) ?? inside;
            double carried = flowOut >= 0 ? inside : outside;
            c[endGhosts[e]] = carried;
            endPassing[e] = flow * carried;
            if (stores)
            {
                endAmounts[tracer][e] += timeStep * ((flowOut * carried) - (onward[e] * outside));
                entered[tracer] -= timeStep * onward[e] * outside;
            }
            else
            {
                entered[tracer] -= timeStep * flowOut * carried;
            }
        }
    }

    private void Sides(int tracer, double[] area, double[] faceFlow, ReadOnlySpan<double> sideFlows, double middle, double timeStep)
    {
        double[] c = values[tracer];
        for (int f = 0; f < sides.Length; f++)
        {
            double given = sides[f].Blood?.Concentration(tracer, middle) ?? (sideAmounts[tracer][f] / sides[f].StoreVolume);
            for (int p = sideFirst[f]; p < sideFirst[f + 1]; p++)
            {
                int cell = sideCells[p];
                double over = timeStep * grid.PerDx[cell];
                double before = area[cell] - (over * (faceFlow[cell + 1] - faceFlow[cell])) + EarlierAt(p, cell, sideFlows, over);
                double amount = timeStep * sideFlows[p] * (sideFlows[p] > 0 ? given : c[cell]);
                c[cell] = ((before * c[cell]) + (amount * grid.PerDx[cell])) / (before + (over * sideFlows[p]));
                if (sides[f].Blood is null)
                {
                    sideAmounts[tracer][f] -= amount;
                }
                else
                {
                    entered[tracer] += amount;
                }
            }
        }
    }

    // Two side flows may share a cell: the later one finds the area that the earlier one left.
    private double EarlierAt(int place, int cell, ReadOnlySpan<double> sideFlows, double over)
    {
        double added = 0;
        for (int p = 0; p < place; p++)
        {
            added += sideCells[p] == cell ? over * sideFlows[p] : 0;
        }

        return added;
    }
}
