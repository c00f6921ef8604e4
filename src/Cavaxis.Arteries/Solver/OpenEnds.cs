using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Grid;
using Cavaxis.Arteries.Network;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Solver;

/// <summary>The open ends of the network and what stands there.</summary>
internal sealed class OpenEnds
{
    private readonly CellGrid grid;
    private readonly IEndCondition[] conditions;
    private readonly int[] faces;
    private readonly int[] cells;
    private readonly double[] signs;

    public OpenEnds(CellGrid grid, IReadOnlyList<EndSpecification> ends)
    {
        this.grid = grid;
        string[] open = [.. grid.Network.OpenNodes];
        Specifications = [.. open.Select(node => Of(ends, node))];
        foreach (EndSpecification end in ends)
        {
            if (!open.Contains(end.Node))
            {
                throw new InputFaultException(new InputFault(
                    FaultCode.NotFound, "ends.node", InputFault.Shown(end.Node), $"one of the open nodes {InputFault.Shown(string.Join(", ", open))}", "Put sources inside the network in as side flows."));
            }
        }

        conditions = [.. Specifications.Select(static e => e.Condition)];
        if (conditions.Distinct(ReferenceEqualityComparer.Instance).Count() != conditions.Length)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.Contradiction, "ends.condition", "one condition at two ends", "a condition of its own at each end", "Build one for each end: each keeps a state."));
        }

        SegmentEnd[] at = [.. open.Select(node => grid.Network.Branches[grid.Network.NodeOf(node)][0])];
        faces = [.. at.Select(grid.FaceOf)];
        cells = [.. at.Select(grid.CellOf)];
        signs = [.. at.Select(static e => e.IsDistal ? 1.0 : -1.0)];
        FlowsOut = new double[open.Length];
        OnwardFlows = new double[open.Length];
    }

    /// <summary>The ends, in the order of the open nodes.</summary>
    public IReadOnlyList<EndSpecification> Specifications { get; }

    /// <summary>Flow out of the network over the last step, m³/s.</summary>
    public double[] FlowsOut { get; }

    /// <summary>Flow out of the store over the last step, or out of the network where there is none, m³/s.</summary>
    public double[] OnwardFlows { get; }

    /// <summary>Flow and head at the end faces.</summary>
    /// <returns>Index of an end without a solution, or −1.</returns>
    public int Solve(FlowState state, double time, double timeStep)
    {
        double density = grid.Network.Fluid.Density;
        for (int e = 0; e < conditions.Length; e++)
        {
            int cell = cells[e], face = faces[e];
            bool distal = signs[e] > 0;
            double area = distal ? state.AreaPlus[cell] : state.AreaMinus[cell];
            double flow = distal ? state.FlowPlus[cell] : -state.FlowMinus[cell];
            VesselEnd end = new(area, flow / area, grid.FaceStiffness[face], grid.FaceOffset[face], state.BodyHalf[cell], density);
            double flowOut = conditions[e].FlowOut(in end, time, timeStep);
            double at = end.AreaAtFlow(flowOut);
            double velocity = flowOut / at;
            state.FaceFlow[face] = signs[e] * flowOut;
            state.FaceHead[face] = (0.5 * velocity * velocity) + (end.PressureAt(at) / density);
            FlowsOut[e] = flowOut;
            OnwardFlows[e] = conditions[e].StoredVolume > 0 ? conditions[e].OnwardFlow : flowOut;
            if (!double.IsFinite(at))
            {
                return e;
            }
        }

        return -1;
    }

    /// <summary>Index of an open node.</summary>
    public int IndexOf(string node)
    {
        int end = Specifications.ToList().FindIndex(e => e.Node == node);
        return end >= 0 ? end : throw new InputFaultException(new InputFault(
            FaultCode.NotFound, "node", InputFault.Shown(node), "an open node of the network", "Name a node at which one segment ends."));
    }

    /// <summary>Place of an end.</summary>
    public NetworkPlace PlaceOf(int end)
    {
        SegmentEnd at = grid.Network.Branches[grid.Network.NodeOf(Specifications[end].Node)][0];
        ArterialSegment segment = grid.Network.Segments[at.Segment];
        return new NetworkPlace(segment.Name, at.IsDistal ? segment.Length : 0);
    }

    private static EndSpecification Of(IReadOnlyList<EndSpecification> ends, string node)
    {
        EndSpecification[] found = [.. ends.Where(e => e.Node == node)];
        return found.Length == 1 ? found[0] : throw new InputFaultException(new InputFault(
            found.Length == 0 ? FaultCode.MissingField : FaultCode.DuplicateField, "ends", InputFault.Shown(node), "one condition for each open node", "Put a windkessel, an inlet or another condition there, once."));
    }
}
