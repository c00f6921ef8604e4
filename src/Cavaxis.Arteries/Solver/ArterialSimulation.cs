using Cavaxis.Arteries.Grid;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Transport;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Solver;

/// <summary>
/// A network whose flow and tracers move in time. The scheme is MUSCL-Hancock, second order in space and time; a step allocates nothing. Not for use by
/// two threads at once.
/// </summary>
public sealed class ArterialSimulation
{
    private readonly CellGrid grid;
    private readonly FlowState state;
    private readonly JunctionSolver junctions;
    private readonly OpenEnds ends;
    private readonly SideFlows sides;
    private readonly LumenBodies bodies;
    private readonly WallDamping damping;
    private readonly TracerField tracers;
    private readonly SpareCells spares;
    private readonly double density;
    private readonly double courant;
    private FlowRecording? recording;

    /// <summary>Everything at rest at the initial pressure.</summary>
    /// <param name="setup">What to start from.</param>
    /// <exception cref="InputFaultException">An end without a condition, a body or source outside the network, or a number outside its range.</exception>
    public ArterialSimulation(ArterialSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        Network = setup.Network;
        density = Network.Fluid.Density;
        courant = Require.InRange(setup.Courant, 0.01, 0.99, "setup.courant (1)", "0.9 is stable.");
        Require.InRange(setup.CellLength, 1e-5, 1, "setup.cellLength (m)", "2 to 10 mm suit a tree.");
        Require.InRange(setup.FewestCells, 1, 100_000, "setup.fewestCells (1)", "At least one cell in each segment.");
        grid = new CellGrid(Network, setup.CellLength, setup.FewestCells);
        state = new FlowState(grid);
        junctions = new JunctionSolver(grid);
        ends = new OpenEnds(grid, setup.Ends);
        sides = new SideFlows(grid, setup.SideFlows);
        bodies = new LumenBodies(grid, setup.Bodies);
        damping = new WallDamping(grid);
        tracers = new TracerField(grid, ends.Specifications, setup.SideFlows, setup.InitialTracers);
        bodies.Place(state, 0);
        spares = new SpareCells(grid);
        spares.Rest(state, Require.InRange(setup.InitialPressure, -1e5, 1e5, "setup.initialPressure (Pa)", "Check the unit."));
    }

    /// <summary>The vessels.</summary>
    public ArterialNetwork Network { get; }

    /// <summary>Time since the start, s.</summary>
    public double Time { get; private set; }

    /// <summary>Steps since the start.</summary>
    public long Steps { get; private set; }

    /// <summary>Cells in all.</summary>
    public int CellCount => grid.Count.Sum();

    /// <summary>Number of tracers.</summary>
    public int TracerCount => tracers.Count;

    /// <summary>Blood in the vessels, m³.</summary>
    public double VesselVolume => grid.Cells().Sum(cell => state.Area[cell] * grid.Dx[cell]);

    /// <summary>Blood in the stores of the ends, m³.</summary>
    public double StoredVolume => ends.Specifications.Sum(static e => e.Condition.StoredVolume);

    /// <summary>Blood that has entered from outside since the start, less what has left for good, m³.</summary>
    public double EnteredVolume { get; private set; }

    /// <summary>Largest |U| dt/dx of the last step: how far blood moves, in cells.</summary>
    public double LargestShift { get; private set; }

    internal CellGrid Grid => grid;

    internal FlowState State => state;

    internal TracerField Tracers => tracers;

    internal SideFlows Sides => sides;

    internal OpenEnds Ends => ends;

    /// <summary>A place to read at.</summary>
    /// <param name="place">The place.</param>
    /// <returns>The probe; it stays valid for this simulation.</returns>
    /// <exception cref="InputFaultException">The place is not in the network.</exception>
    public ArterialProbe Locate(NetworkPlace place)
    {
        int segment = Network.Locate(place);
        double at = (place.Distance * grid.PerDx[grid.Start[segment]]) - 0.5;
        if (grid.Count[segment] == 1)
        {
            return new ArterialProbe(segment, grid.Start[segment], 0);
        }

        int cell = Math.Clamp((int)Math.Floor(at), 0, grid.Count[segment] - 2);
        return new ArterialProbe(segment, grid.Start[segment] + cell, at - cell);
    }

    /// <summary>Pressure, with that of a viscous wall, Pa.</summary>
    /// <param name="probe">Where.</param>
    /// <returns>Pressure.</returns>
    public double Pressure(ArterialProbe probe)
    {
        double here = CellPressure(probe.Segment, probe.Cell);
        return here + (probe.Share * (CellPressure(probe.Segment, probe.Cell + 1) - here));
    }

    /// <summary>Flow towards the distal end, m³/s.</summary>
    /// <param name="probe">Where.</param>
    /// <returns>Flow.</returns>
    public double Flow(ArterialProbe probe)
    {
        double here = state.Area[probe.Cell] * state.Velocity[probe.Cell];
        return here + (probe.Share * ((state.Area[probe.Cell + 1] * state.Velocity[probe.Cell + 1]) - here));
    }

    /// <summary>Area of the blood, m².</summary>
    /// <param name="probe">Where.</param>
    /// <returns>Area.</returns>
    public double Area(ArterialProbe probe) => probe.Of(state.Area);

    /// <summary>Velocity towards the distal end, m/s.</summary>
    /// <param name="probe">Where.</param>
    /// <returns>Velocity.</returns>
    public double Velocity(ArterialProbe probe) => probe.Of(state.Velocity);

    /// <summary>Concentration of a tracer in the cell at a place (no straight line between cells, so that it is always a value that stands somewhere).</summary>
    /// <param name="probe">Where.</param>
    /// <param name="tracer">Index of the tracer.</param>
    /// <returns>Concentration.</returns>
    public double Concentration(ArterialProbe probe, int tracer) => tracers.Of(tracer)[probe.Share < 0.5 ? probe.Cell : probe.Cell + 1];

    /// <summary>Flow out of the network at an open node over the last step, m³/s.</summary>
    /// <param name="node">Name of the node.</param>
    /// <returns>Flow; negative where blood enters.</returns>
    public double FlowOut(string node) => ends.FlowsOut[ends.IndexOf(node)];

    /// <summary>Flow into the network of a side flow over the last step, m³/s.</summary>
    /// <param name="sideFlow">Index in the setup.</param>
    /// <param name="place">Index of its place.</param>
    /// <returns>Flow.</returns>
    public double SideFlowIn(int sideFlow, int place) => sides.FlowsIn[sides.First[sideFlow] + place];

    /// <summary>Concentration of a tracer in the store of an open node, or in the vessel there where it has none.</summary>
    /// <param name="node">Name of the node.</param>
    /// <param name="tracer">Index of the tracer.</param>
    /// <returns>Concentration.</returns>
    public double ConcentrationAtEnd(string node, int tracer) => tracers.AtEnd(ends.IndexOf(node), tracer);

    /// <summary>Amount of a tracer in vessels and stores.</summary>
    /// <param name="tracer">Index of the tracer.</param>
    /// <returns>Concentration times m³.</returns>
    public double TracerAmount(int tracer) => tracers.Stored(tracer) + Amount(state.Area, tracers.Of(tracer));

    /// <summary>Amount of a tracer that has entered from outside since the start, less what has left for good.</summary>
    /// <param name="tracer">Index of the tracer.</param>
    /// <returns>Concentration times m³.</returns>
    public double TracerEntered(int tracer) => tracers.Entered(tracer);

    /// <summary>Moves on by a time, in steps as long as they may be.</summary>
    /// <param name="duration">Time, s.</param>
    /// <exception cref="ArterialFlowException">The flow left what the equations describe.</exception>
    public void Advance(double duration)
    {
        double target = Time + duration;
        while (Step(target - Time))
        {
        }

        Time = target;
    }

    internal void ResetSpareAreas(double[] area) => spares.Reset(area);

    /// <summary>Amount in the vessels for areas and concentrations.</summary>
    internal double Amount(double[] area, double[] values) => grid.Cells().Sum(cell => area[cell] * values[cell] * grid.Dx[cell]);

    /// <summary>Writes the flows of the coming steps down until it is stopped.</summary>
    internal void RecordInto(FlowRecording? target) => recording = target;

    /// <summary>One step.</summary>
    /// <param name="remaining">Time that is left, s: divided into equal steps of which this takes one.</param>
    /// <returns>True where time is left.</returns>
    private bool Step(double remaining)
    {
        if (remaining <= 0)
        {
            return false;
        }

        if (!FlowKernels.Pressures(grid, state, density, out double waves, out double blood))
        {
            throw FlowFault.Find(grid, state, density, Time);
        }

        double left = Math.Max(1, Math.Ceiling((remaining * waves / courant) - 1e-9));
        double timeStep = remaining / left;
        LargestShift = blood * timeStep;
        bodies.Move(state, Time, timeStep);
        sides.Ask(state, Time, timeStep);
        spares.Extend(state.Pressure);
        spares.Extend(state.Flow);
        FlowKernels.Predict(grid, state, density, timeStep);
        FlowKernels.Faces(grid, state);
        int node = junctions.Solve(state);
        if (node >= 0)
        {
            SegmentEnd at = Network.Branches[node][0];
            throw NoSolution(new NetworkPlace(Network.Segments[at.Segment].Name, at.IsDistal ? Network.Segments[at.Segment].Length : 0));
        }

        int end = ends.Solve(state, Time, timeStep);
        if (end >= 0)
        {
            throw NoSolution(ends.PlaceOf(end));
        }

        if (tracers.Count > 0)
        {
            tracers.Step(state.Area, state.FaceFlow, ends.OnwardFlows, sides.FlowsIn, Time + (0.5 * timeStep), timeStep);
        }

        recording?.Expect(LargestShift);
        recording?.Add(state.FaceFlow, ends.OnwardFlows, sides.FlowsIn, timeStep);
        FlowKernels.Update(grid, state, timeStep);
        sides.Add(state, timeStep);
        bodies.Arrive(state, timeStep);
        spares.Reset(state.Area);
        spares.Clear(state.Velocity);
        if (damping.Any)
        {
            damping.Apply(state, timeStep);
        }

        Count(timeStep);
        Time += timeStep;
        Steps++;
        return left > 1;
    }

    private void Count(double timeStep)
    {
        double flow = 0;
        foreach (double onward in ends.OnwardFlows)
        {
            flow -= onward;
        }

        for (int f = 0; f < sides.All.Length; f++)
        {
            for (int p = sides.First[f]; p < sides.First[f + 1]; p++)
            {
                flow += sides.All[f].Blood is null ? 0 : sides.FlowsIn[p];
            }
        }

        EnteredVolume += timeStep * flow;
    }

    private double CellPressure(int segment, int cell) => (grid.Stiffness[cell] * Math.Sqrt(state.Area[cell] + state.Body[cell])) + grid.Offset[cell]
        + (Network.Segments[segment].WallViscosity > 0 ? damping.Pressure(state, segment, cell) : 0);

    private ArterialFlowException NoSolution(NetworkPlace place) => new(ArterialFlowFault.NoSolutionAtEnd, place, Time, double.NaN, double.NaN);
}
