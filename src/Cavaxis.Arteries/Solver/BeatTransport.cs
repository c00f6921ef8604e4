using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Transport;

namespace Cavaxis.Arteries.Solver;

/// <summary>
/// Transport alone on a recorded beat of a periodic flow: the volumes that passed every face are repeated until the tracers are periodic too, which takes many more beats
/// than the flow does. Starts from the tracers of the simulation at the start of the recording.
/// </summary>
public sealed class BeatTransport
{
    private readonly ArterialSimulation simulation;
    private readonly FlowRecording recording;
    private readonly TracerField tracers;
    private readonly double[] area;
    private readonly double start;
    private int step;

    private BeatTransport(ArterialSimulation simulation, FlowRecording recording, TracerField tracers, double[] area, double start, double closing)
    {
        this.simulation = simulation;
        this.recording = recording;
        this.tracers = tracers;
        this.area = area;
        this.start = start;
        ClosingFlow = closing;
        Period = Enumerable.Range(0, recording.Count).Sum(recording.TimeStep);
    }

    /// <summary>Length of the beat, s.</summary>
    public double Period { get; }

    /// <summary>Steps in a beat.</summary>
    public int StepsPerBeat => recording.Count;

    /// <summary>Whole beats carried so far.</summary>
    public int Beats { get; private set; }

    /// <summary>Time since the start of the beat, s.</summary>
    public double TimeInBeat { get; private set; }

    /// <summary>Largest constant flow that was added somewhere to let the recorded beat end where it began, m³/s: zero for an exactly periodic flow.</summary>
    public double ClosingFlow { get; }

    /// <summary>Moves a simulation on by one beat and records the flow. Its flow should be periodic (see <see cref="PeriodicFlow"/>).</summary>
    /// <param name="simulation">The simulation.</param>
    /// <param name="period">Length of a beat, s.</param>
    /// <param name="mostShift">Cells that blood may move in one step of the transport, below 1.</param>
    /// <returns>The transport.</returns>
    public static BeatTransport Record(ArterialSimulation simulation, double period, double mostShift = 0.5)
    {
        ArgumentNullException.ThrowIfNull(simulation);
        TracerField tracers = new(simulation.Tracers);
        double[] area = [.. simulation.State.Area];
        double start = simulation.Time;
        double[] stores = [.. simulation.Ends.Specifications.Select(static e => e.Condition.StoredVolume)];
        FlowRecording recording = new(mostShift);
        simulation.RecordInto(recording);
        simulation.Advance(period);
        simulation.RecordInto(null);
        recording.Close();
        double closing = Close(simulation, recording, area, stores, period);
        return new BeatTransport(simulation, recording, tracers, area, start, closing);
    }

    /// <summary>Carries the tracers over one beat.</summary>
    /// <param name="afterStep">Asked after each step, to read; may be null.</param>
    public void Beat(Action<BeatTransport>? afterStep = null)
    {
        TimeInBeat = 0;
        for (step = 0; step < recording.Count; step++)
        {
            double timeStep = recording.TimeStep(step);
            double[] flow = recording.FaceFlow(step);
            double[] side = recording.SideFlow(step);
            tracers.Step(area, flow, recording.OnwardFlow(step), side, start + TimeInBeat + (0.5 * timeStep), timeStep);
            Move(simulation, area, flow, side, timeStep);
            TimeInBeat += timeStep;
            afterStep?.Invoke(this);
        }

        Beats++;
    }

    /// <summary>Carries the tracers until a beat changes them little.</summary>
    /// <param name="tolerance">Largest change of a concentration in any cell from beat to beat, relative to the largest concentration of that tracer.</param>
    /// <param name="mostBeats">Beats at most.</param>
    /// <returns>True where the tracers became periodic.</returns>
    public bool RunUntilPeriodic(double tolerance, int mostBeats)
    {
        double[][] before = [.. Enumerable.Range(0, tracers.Count).Select(k => new double[tracers.Of(k).Length])];
        for (int beat = 0; beat < mostBeats; beat++)
        {
            for (int k = 0; k < tracers.Count; k++)
            {
                tracers.Of(k).CopyTo(before[k], 0);
            }

            Beat();
            if (Enumerable.Range(0, tracers.Count).All(k => Change(before[k], tracers.Of(k)) <= tolerance))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Concentration of a tracer at a place now.</summary>
    /// <param name="probe">Where.</param>
    /// <param name="tracer">Index of the tracer.</param>
    /// <returns>Concentration.</returns>
    public double Concentration(ArterialProbe probe, int tracer) => tracers.Of(tracer)[probe.Share < 0.5 ? probe.Cell : probe.Cell + 1];

    /// <summary>Concentration of a tracer in the store of an open node.</summary>
    /// <param name="node">Name of the node.</param>
    /// <param name="tracer">Index of the tracer.</param>
    /// <returns>Concentration.</returns>
    public double ConcentrationAtEnd(string node, int tracer)
    {
        int end = simulation.Ends.IndexOf(node);
        return tracers.AtEnd(end, tracer);
    }

    /// <summary>Flow at a place over the step just taken, m³/s.</summary>
    /// <param name="probe">Where.</param>
    /// <returns>Flow towards the distal end.</returns>
    public double Flow(ArterialProbe probe)
    {
        double[] flow = recording.FaceFlow(Math.Min(step, recording.Count - 1));
        int face = probe.Share < 0.5 ? probe.Cell : probe.Cell + 1;
        return 0.5 * (flow[face] + flow[face + 1]);
    }

    /// <summary>Area at a place now, m².</summary>
    /// <param name="probe">Where.</param>
    /// <returns>Area.</returns>
    public double Area(ArterialProbe probe) => probe.Of(area);

    /// <summary>Amount of a tracer in vessels and stores.</summary>
    /// <param name="tracer">Index of the tracer.</param>
    /// <returns>Concentration times m³.</returns>
    public double TracerAmount(int tracer) => tracers.Stored(tracer) + simulation.Amount(area, tracers.Of(tracer));

    /// <summary>Amount of a tracer that has entered from outside since the simulation began, less what has left.</summary>
    /// <param name="tracer">Index of the tracer.</param>
    /// <returns>Concentration times m³.</returns>
    public double TracerEntered(int tracer) => tracers.Entered(tracer);

    private double Change(double[] before, double[] after)
    {
        double change = 0, most = 0;
        foreach (int cell in simulation.Grid.Cells())
        {
            change = Math.Max(change, Math.Abs(after[cell] - before[cell]));
            most = Math.Max(most, Math.Abs(after[cell]));
        }

        return most > 0 ? change / most : change;
    }

    private static double Close(ArterialSimulation simulation, FlowRecording recording, double[] area, double[] stores, double period)
    {
        double[] end = [.. area];
        for (int n = 0; n < recording.Count; n++)
        {
            Move(simulation, end, recording.FaceFlow(n), recording.SideFlow(n), recording.TimeStep(n));
        }

        double[] gained = [.. end.Zip(area, static (after, before) => after - before)];
        IReadOnlyList<EndSpecification> ends = simulation.Ends.Specifications;
        int root = Math.Max(0, ends.ToList().FindIndex(static e => e.Condition.StoredVolume == 0));
        BeatClosure closure = new(simulation.Grid, gained, period, simulation.Network.NodeOf(ends[root].Node));
        double largest = closure.Largest;
        for (int e = 0; e < ends.Count; e++)
        {
            double extra = (ends[e].Condition.StoredVolume - stores[e]) / period;
            largest = Math.Max(largest, Math.Abs(extra));
            for (int n = 0; n < recording.Count; n++)
            {
                recording.OnwardFlow(n)[e] += extra;
            }
        }

        for (int n = 0; n < recording.Count; n++)
        {
            closure.AddTo(recording.FaceFlow(n));
        }

        return largest;
    }

    private static void Move(ArterialSimulation simulation, double[] area, double[] flow, double[] side, double timeStep)
    {
        TracerKernels.Areas(simulation.Grid, area, flow, timeStep);
        for (int p = 0; p < side.Length; p++)
        {
            int cell = simulation.Sides.Cells[p];
            area[cell] += timeStep * side[p] * simulation.Grid.PerDx[cell];
        }

        simulation.ResetSpareAreas(area);
    }
}
