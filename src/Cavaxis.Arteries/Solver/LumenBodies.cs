using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Grid;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Solver;

/// <summary>Bodies in the lumen, laid on cells by how much of each cell they cover.</summary>
internal sealed class LumenBodies
{
    private readonly CellGrid grid;
    private readonly LumenBody[] bodies;
    private readonly int[][] cells;
    private readonly double[][] shares;
    private readonly bool changes;

    public LumenBodies(CellGrid grid, IReadOnlyList<LumenBody> bodies)
    {
        this.grid = grid;
        this.bodies = [.. bodies];
        changes = bodies.Any(static b => b.Changes);
        cells = new int[bodies.Count][];
        shares = new double[bodies.Count][];
        for (int b = 0; b < bodies.Count; b++)
        {
            int segment = grid.Network.Locate(bodies[b].From);
            double length = grid.Network.Segments[segment].Length;
            double from = bodies[b].From.Distance;
            double to = from + bodies[b].Length;
            Require.InRange(to, 0, length * (1 + 1e-9), $"{bodies[b].From.Segment}.body end (m)", "Cut a body that reaches into the next segment into one body for each.");
            double dx = length / grid.Count[segment];
            int[] covered = [.. Enumerable.Range(0, grid.Count[segment]).Where(i => Overlap(i, dx, from, to) > 0)];
            cells[b] = [.. covered.Select(i => grid.Start[segment] + i)];
            shares[b] = [.. covered.Select(i => Overlap(i, dx, from, to) / dx)];
        }
    }

    /// <summary>Lays the bodies in at the start.</summary>
    public void Place(FlowState state, double time)
    {
        Array.Fill(state.Drag, grid.Network.Fluid.Drag);
        Array.Clear(state.Body);
        for (int b = 0; b < bodies.Length; b++)
        {
            double area = bodies[b].AreaAt(time);
            for (int i = 0; i < cells[b].Length; i++)
            {
                state.Body[cells[b][i]] += shares[b][i] * area;
            }
        }

        state.Body.CopyTo(state.BodyHalf, 0);
    }

    /// <summary>Sets friction for the areas at hand, and areas and their change for the coming step.</summary>
    public void Move(FlowState state, double time, double timeStep)
    {
        for (int b = 0; b < bodies.Length; b++)
        {
            foreach (int cell in cells[b])
            {
                state.Drag[cell] = grid.Network.Fluid.Drag;
                state.BodyRate[cell] = 0;
                state.BodyHalf[cell] = state.Body[cell];
            }
        }

        for (int b = 0; b < bodies.Length; b++)
        {
            double change = bodies[b].Changes ? bodies[b].AreaAt(time + timeStep) - bodies[b].AreaAt(time) : 0;
            for (int i = 0; i < cells[b].Length; i++)
            {
                int cell = cells[b][i];
                state.BodyRate[cell] += shares[b][i] * change / timeStep;
                state.BodyHalf[cell] += 0.5 * shares[b][i] * change;
                double ring = LumenBody.RingFriction(state.Body[cell], state.Area[cell]);
                state.Drag[cell] = grid.Network.Fluid.Drag * Math.Max(1, bodies[b].FrictionFactor * ring);
            }
        }
    }

    /// <summary>Ends the step: the areas are those of its end.</summary>
    public void Arrive(FlowState state, double timeStep)
    {
        if (!changes)
        {
            return;
        }

        for (int b = 0; b < bodies.Length; b++)
        {
            foreach (int cell in cells[b])
            {
                state.Body[cell] += timeStep * state.BodyRate[cell];
                state.BodyRate[cell] = 0;
            }
        }
    }

    private static double Overlap(int cell, double dx, double from, double to) => Math.Max(0, Math.Min(to, (cell + 1) * dx) - Math.Max(from, cell * dx));
}
