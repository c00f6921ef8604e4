using Cavaxis.Arteries.Grid;
using Cavaxis.Arteries.Network;

namespace Cavaxis.Arteries.Solver;

/// <summary>Finds the cell in which a flow left what the equations describe.</summary>
internal static class FlowFault
{
    /// <summary>The first such cell, as a fault.</summary>
    public static ArterialFlowException Find(CellGrid grid, FlowState state, double density, double time)
    {
        for (int s = 0; s < grid.Count.Length; s++)
        {
            for (int i = 0; i < grid.Count[s]; i++)
            {
                int cell = grid.Start[s] + i;
                double area = state.Area[cell], velocity = state.Velocity[cell];
                double speed = Math.Sqrt(area * grid.Stiffness[cell] / (2 * density * Math.Sqrt(area + state.Body[cell])));
                if (!(Math.Abs(velocity) < speed))
                {
                    return new ArterialFlowException(
                        area > 0 && double.IsFinite(velocity) ? ArterialFlowFault.Supercritical : ArterialFlowFault.Emptied,
                        new NetworkPlace(grid.Network.Segments[s].Name, (i + 0.5) * grid.Dx[cell]),
                        time,
                        velocity,
                        area);
                }
            }
        }

        return new ArterialFlowException(ArterialFlowFault.Emptied, new NetworkPlace(grid.Network.Segments[0].Name, 0), time, double.NaN, double.NaN);
    }
}
