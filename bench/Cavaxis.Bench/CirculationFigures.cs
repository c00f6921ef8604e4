using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Circulation.Solver;

namespace Cavaxis.Bench;

/// <summary>The circulation with gas transport on one thread, in times real time: settled patients go on breathing.</summary>
internal static class CirculationFigures
{
    private const int Seed = 20;

    /// <summary>Measures.</summary>
    /// <param name="clock">The clock.</param>
    /// <param name="seconds">Simulated time of one run, s.</param>
    public static void Print(Clock clock, double seconds)
    {
        FigureTable table = new(
            $"Circulation with gas transport, {seconds:F0} s of settled breaths, one thread, {MachineLoad.Words()}",
            "support", "patients", "processor ms", "times real time", "by median wall time", "over one alone", "steps per simulated s", "ns per evaluation");
        foreach ((string name, CirculationParameters patient) in SupportedPatients.Kinds)
        {
            CirculationParameters[] row = [patient, .. SupportedPatients.Around(patient, EightLanes.Count - 1, Seed)];
            double[][] starts = [.. CirculationSimulator.Settle(row).Select(static s => s.State.ToArray())];
            double alone = Row<OneLane>(table, clock, name, row[..1], starts[..1], seconds, null);
            Row<EightLanes>(table, clock, name, row, starts, seconds, alone);
        }

        table.Print();
    }

    private static double Row<T>(
        FigureTable table, Clock clock, string name, CirculationParameters[] patients, double[][] starts, double seconds, double? alone)
        where T : unmanaged, ILane<T>
    {
        IntegratorRun<T> run = new(patients, starts, Tolerance.Usual.Relative);
        SolverCounts counts = default;
        Timing t = clock.Measure(() => counts = run.Seconds(seconds));
        double simulatedMs = T.Count * seconds * 1e3;
        double speed = simulatedMs / t.ProcessorMs;
        table.Add(
            $"{name}", $"{T.Count}", $"{t.ProcessorMs:F0}", $"{speed:F0}", $"{simulatedMs / t.MedianMs:F0}", $"{speed / (alone ?? speed):F2}",
            $"{counts.Steps / (T.Count * seconds):F0}", $"{t.ProcessorMs * 1e6 / counts.Evaluations:F0}");
        return speed;
    }
}
