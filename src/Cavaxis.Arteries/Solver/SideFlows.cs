using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Grid;

namespace Cavaxis.Arteries.Solver;

/// <summary>What gives or takes blood inside the network, laid on cells.</summary>
internal sealed class SideFlows
{
    private readonly CellGrid grid;
    private readonly double[] pressures;

    public SideFlows(CellGrid grid, IReadOnlyList<ISideFlow> flows)
    {
        this.grid = grid;
        All = [.. flows];
        First = new int[All.Length + 1];
        for (int f = 0; f < All.Length; f++)
        {
            First[f + 1] = First[f] + All[f].Places.Count;
        }

        Cells = [.. All.SelectMany(static f => f.Places).Select(grid.CellAt)];
        FlowsIn = new double[Cells.Length];
        pressures = new double[Cells.Length];
    }

    /// <summary>The flows.</summary>
    public ISideFlow[] All { get; }

    /// <summary>For each flow its first place, and behind the last the number of places.</summary>
    public int[] First { get; }

    /// <summary>Cell of each place.</summary>
    public int[] Cells { get; }

    /// <summary>Flow into the network at each place over the last step, m³/s.</summary>
    public double[] FlowsIn { get; }

    /// <summary>Asks every flow for the coming step.</summary>
    public void Ask(FlowState state, double time, double timeStep)
    {
        for (int p = 0; p < Cells.Length; p++)
        {
            pressures[p] = state.Pressure[Cells[p]];
        }

        for (int f = 0; f < All.Length; f++)
        {
            int count = First[f + 1] - First[f];
            All[f].Flows(time, timeStep, pressures.AsSpan(First[f], count), FlowsIn.AsSpan(First[f], count));
        }
    }

    /// <summary>Adds their volume and momentum to the cells; what leaves takes its velocity along.</summary>
    public void Add(FlowState state, double timeStep)
    {
        for (int f = 0; f < All.Length; f++)
        {
            for (int p = First[f]; p < First[f + 1]; p++)
            {
                int cell = Cells[p];
                double added = timeStep * FlowsIn[p] * grid.PerDx[cell];
                double area = state.Area[cell] + added;
                if (added > 0)
                {
                    state.Velocity[cell] += added / area * (All[f].AxialVelocity(p - First[f], FlowsIn[p]) - state.Velocity[cell]);
                }

                state.Area[cell] = area;
            }
        }
    }
}
