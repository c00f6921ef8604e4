using Cavaxis.Arteries.Grid;
using Cavaxis.Arteries.Network;

namespace Cavaxis.Arteries.Solver;

/// <summary>
/// Nodes at which two or more segments meet: one total pressure, flows that sum to zero, and in each branch the invariant U ± ∫ c dA/A that arrives, which is
/// U ± 4c where no body lies in the lumen. Newton's method; its first step is the same linear solution that the inner faces use, and small waves need no second one.
/// </summary>
internal sealed class JunctionSolver
{
    private const int MostIterations = 30;
    private const double SmallChange = 1e-3;

    /// <summary>√(3/5), the outer places of the rule with three points.</summary>
    private const double GaussPlace = 0.7745966692414834;

    private readonly CellGrid grid;
    private readonly double density;
    private readonly int[] nodes;
    private readonly int[] first;
    private readonly int[] faces;
    private readonly int[] cells;
    private readonly double[] signs;
    private readonly double[] area;
    private readonly double[] velocity;
    private readonly double[] startArea;
    private readonly double[] startVelocity;

    public JunctionSolver(CellGrid grid)
    {
        this.grid = grid;
        density = grid.Network.Fluid.Density;
        nodes = [.. Enumerable.Range(0, grid.Network.Nodes.Count).Where(n => grid.Network.Branches[n].Count > 1)];
        SegmentEnd[] ends = [.. nodes.SelectMany(n => grid.Network.Branches[n])];
        first = new int[nodes.Length + 1];
        for (int n = 0; n < nodes.Length; n++)
        {
            first[n + 1] = first[n] + grid.Network.Branches[nodes[n]].Count;
        }

        faces = [.. ends.Select(grid.FaceOf)];
        cells = [.. ends.Select(grid.CellOf)];
        signs = [.. ends.Select(static e => e.IsDistal ? 1.0 : -1.0)];
        area = new double[ends.Length];
        velocity = new double[ends.Length];
        startArea = new double[ends.Length];
        startVelocity = new double[ends.Length];
    }

    /// <summary>Flow and head at the end faces of all branches of all nodes.</summary>
    /// <returns>Index of a node without a solution, or −1.</returns>
    public int Solve(FlowState state)
    {
        for (int n = 0; n < nodes.Length; n++)
        {
            if (!Linear(state, first[n], first[n + 1]) && !Newton(state, first[n], first[n + 1]))
            {
                return nodes[n];
            }
        }

        return -1;
    }

    private bool Linear(FlowState state, int from, int to)
    {
        double above = 0, below = 0;
        for (int e = from; e < to; e++)
        {
            int cell = cells[e];
            double sign = signs[e];
            bool distal = sign > 0;
            double admittance = distal ? state.AdmittancePlus[cell] : state.AdmittanceMinus[cell];
            above += (sign * (distal ? state.FlowPlus[cell] : state.FlowMinus[cell])) + ((distal ? state.HeadPlus[cell] : state.HeadMinus[cell]) * admittance);
            below += admittance;
        }

        double head = above / below;
        bool small = true;
        for (int e = from; e < to; e++)
        {
            int cell = cells[e];
            double sign = signs[e];
            bool distal = sign > 0;
            double admittance = distal ? state.AdmittancePlus[cell] : state.AdmittanceMinus[cell];
            double area = distal ? state.AreaPlus[cell] : state.AreaMinus[cell];
            double change = ((distal ? state.HeadPlus[cell] : state.HeadMinus[cell]) - head) * admittance;

            // The area changes by about dQ/c.
            small &= Math.Abs(change) * admittance < SmallChange * area * area;
            state.FaceFlow[faces[e]] = (distal ? state.FlowPlus[cell] : state.FlowMinus[cell]) + (sign * change);
            state.FaceHead[faces[e]] = head;
        }

        return small;
    }

    private bool Newton(FlowState state, int from, int to)
    {
        for (int e = from; e < to; e++)
        {
            int cell = cells[e];
            bool distal = signs[e] > 0;
            area[e] = distal ? state.AreaPlus[cell] : state.AreaMinus[cell];
            velocity[e] = signs[e] * (distal ? state.FlowPlus[cell] : state.FlowMinus[cell]) / area[e];
            (startArea[e], startVelocity[e]) = (area[e], velocity[e]);
        }

        for (int iteration = 0; iteration < MostIterations; iteration++)
        {
            double above = 0, below = 0;
            for (int e = from; e < to; e++)
            {
                double perImpedance = area[e] / Speed(state, e);
                above += (area[e] * velocity[e]) + (Head(state, e) * perImpedance);
                below += perImpedance;
            }

            double head = above / below, largest = 0;
            for (int e = from; e < to; e++)
            {
                double c = Speed(state, e);
                double change = (Head(state, e) - head) * area[e] / c;
                state.FaceFlow[faces[e]] = signs[e] * ((area[e] * velocity[e]) + change);
                state.FaceHead[faces[e]] = head;
                double areaChange = Math.Clamp(change / (velocity[e] - c), -0.5 * area[e], area[e]);
                area[e] += areaChange;
                velocity[e] = startVelocity[e] - Travelled(state, e);
                largest = Math.Max(largest, Math.Abs(areaChange) / area[e]);
            }

            if (!double.IsFinite(head))
            {
                return false;
            }

            if (largest < 1e-10)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// ∫ c dA/A from the area that arrives to the present one. With c = k √A/(A + B)^¼ and s = √A it is 2k ∫ (s² + B)^−¼ ds: 4c where the body B is none, else by
    /// Gauss and Legendre with three points, which over the changes of one step is exact to rounding.
    /// </summary>
    private double Travelled(FlowState state, int end)
    {
        double body = state.BodyHalf[cells[end]];
        double k = Math.Sqrt(grid.FaceStiffness[faces[end]] / (2 * density));
        if (body == 0)
        {
            return 4 * k * (Math.Sqrt(Math.Sqrt(area[end])) - Math.Sqrt(Math.Sqrt(startArea[end])));
        }

        double from = Math.Sqrt(startArea[end]), to = Math.Sqrt(area[end]);
        double middle = 0.5 * (from + to), half = 0.5 * (to - from);
        double Inverse(double s) => 1 / Math.Sqrt(Math.Sqrt((s * s) + body));
        return 2 * k * half * ((8.0 / 9 * Inverse(middle)) + (5.0 / 9 * (Inverse(middle - (GaussPlace * half)) + Inverse(middle + (GaussPlace * half)))));
    }

    private double Speed(FlowState state, int end) =>
        Math.Sqrt(area[end] * grid.FaceStiffness[faces[end]] / (2 * density * Math.Sqrt(area[end] + state.BodyHalf[cells[end]])));

    private double Head(FlowState state, int end) => (0.5 * velocity[end] * velocity[end])
        + (((grid.FaceStiffness[faces[end]] * Math.Sqrt(area[end] + state.BodyHalf[cells[end]])) + grid.FaceOffset[faces[end]]) / density);
}
