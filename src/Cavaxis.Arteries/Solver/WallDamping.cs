using Cavaxis.Arteries.Grid;

namespace Cavaxis.Arteries.Solver;

/// <summary>
/// Voigt wall: P gains −γ ∂Q/∂x, γ = (2/3)√π φ h/(Wref √W). Taken after each step by itself (splitting), with the trapezium rule and no change of that
/// pressure at the ends of a segment: one tridiagonal system for each segment whose wall is viscous.
/// </summary>
internal sealed class WallDamping
{
    private readonly CellGrid grid;
    private readonly int[] viscous;
    private readonly double[] upper;
    private readonly double[] right;
    private readonly double[] damping;

    public WallDamping(CellGrid grid)
    {
        this.grid = grid;
        viscous = [.. Enumerable.Range(0, grid.Count.Length).Where(s => grid.Network.Segments[s].WallViscosity > 0)];
        int most = grid.Count.Max();
        upper = new double[most + 1];
        right = new double[most + 1];
        damping = new double[most + 2];
    }

    /// <summary>True where any wall is viscous.</summary>
    public bool Any => viscous.Length > 0;

    /// <summary>Pressure of the wall's viscosity in the middle of a cell, Pa.</summary>
    public double Pressure(FlowState state, int segment, int cell)
    {
        int start = grid.Start[segment], last = start + grid.Count[segment] - 1;
        int before = Math.Max(start, cell - 1), after = Math.Min(last, cell + 1);
        double slope = ((state.Area[after] * state.Velocity[after]) - (state.Area[before] * state.Velocity[before])) * grid.PerDx[cell] / Math.Max(1, after - before);
        double gamma = 0.5 * (grid.FaceWallDamping[cell] + grid.FaceWallDamping[cell + 1]);
        return -gamma * slope / Math.Sqrt(state.Area[cell] + state.Body[cell]);
    }

    /// <summary>Changes the velocities over one step.</summary>
    public void Apply(FlowState state, double timeStep)
    {
        foreach (int segment in viscous)
        {
            int start = grid.Start[segment], n = grid.Count[segment];
            double scale = 0.5 * timeStep * grid.PerDx[start] * grid.PerDx[start] / grid.Network.Fluid.Density;
            damping[0] = 0;
            damping[n] = 0;
            for (int i = 1; i < n; i++)
            {
                int cell = start + i;
                damping[i] = scale * grid.FaceWallDamping[cell] / Math.Sqrt(0.5 * (state.Area[cell] + state.Body[cell] + state.Area[cell - 1] + state.Body[cell - 1]));
            }

            // (1/A) Q' is the change of U: solved for the flow, forward sweep and back.
            double flowBefore = 0, flow = state.Area[start] * state.Velocity[start];
            for (int i = 0; i < n; i++)
            {
                int cell = start + i;
                double flowAfter = i + 1 < n ? state.Area[cell + 1] * state.Velocity[cell + 1] : 0;
                double force = (damping[i + 1] * (flowAfter - flow)) - (damping[i] * (flow - flowBefore));
                double diagonal = (1 / state.Area[cell]) + damping[i] + damping[i + 1];
                double lower = i > 0 ? -damping[i] : 0;
                double pivot = diagonal - (i > 0 ? lower * upper[i - 1] : 0);
                upper[i] = -damping[i + 1] / pivot;
                right[i] = (state.Velocity[cell] + force - (i > 0 ? lower * right[i - 1] : 0)) / pivot;
                flowBefore = flow;
                flow = flowAfter;
            }

            for (int i = n - 1; i >= 0; i--)
            {
                right[i] -= i + 1 < n ? upper[i] * right[i + 1] : 0;
                state.Velocity[start + i] = right[i] / state.Area[start + i];
            }
        }
    }
}
