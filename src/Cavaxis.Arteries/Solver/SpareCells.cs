using Cavaxis.Arteries.Grid;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Solver;

/// <summary>The spare cells beside the ends of segments, and the state of rest.</summary>
internal sealed class SpareCells(CellGrid grid)
{
    /// <summary>Puts everything at rest at one pressure.</summary>
    public void Rest(FlowState state, double pressure)
    {
        for (int i = 0; i < grid.Length; i++)
        {
            double root = (pressure - grid.Offset[i]) / grid.Stiffness[i];
            state.Area[i] = (root * root) - state.Body[i];
            if (root <= 0 || state.Area[i] <= 0)
            {
                throw new InputFaultException(new InputFault(
                    FaultCode.Contradiction,
                    "setup.initialPressure (Pa)",
                    FormattableString.Invariant($"{pressure:G6}"),
                    "a pressure at which every vessel holds blood",
                    "Raise it, or make the bodies in the lumen smaller."));
            }
        }

        Reset(state.Area);
        Clear(state.Velocity);
    }

    /// <summary>Values go on in a straight line, so that the slope of an end cell is that to its inner neighbour; a cell alone has none.</summary>
    public void Extend(double[] values)
    {
        for (int s = 0; s < grid.Start.Length; s++)
        {
            int start = grid.Start[s], end = start + grid.Count[s];
            bool single = grid.Count[s] == 1;
            values[start - 1] = single ? values[start] : (2 * values[start]) - values[start + 1];
            values[end] = single ? values[start] : (2 * values[end - 1]) - values[end - 2];
        }
    }

    /// <summary>Gives the spare cells an area that keeps every number finite.</summary>
    public void Reset(double[] area)
    {
        for (int s = 0; s < grid.Start.Length; s++)
        {
            int before = grid.Start[s] - 1, behind = grid.Start[s] + grid.Count[s];
            area[before] = grid.RootReference[before] * grid.RootReference[before];
            area[behind] = grid.RootReference[behind] * grid.RootReference[behind];
        }

        for (int i = grid.Start[^1] + grid.Count[^1]; i < grid.Length; i++)
        {
            area[i] = grid.RootReference[i] * grid.RootReference[i];
        }
    }

    /// <summary>Sets the spare cells to zero.</summary>
    public void Clear(double[] values)
    {
        for (int s = 0; s < grid.Start.Length; s++)
        {
            values[grid.Start[s] - 1] = 0;
            values[grid.Start[s] + grid.Count[s]] = 0;
        }

        values.AsSpan(grid.Start[^1] + grid.Count[^1]).Clear();
    }
}
