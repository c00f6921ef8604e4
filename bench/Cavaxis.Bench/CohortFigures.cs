using System.Diagnostics;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Circulation.Solver;

namespace Cavaxis.Bench;

/// <summary>Many different patients, eight side by side, on one thread and on two.</summary>
internal static class CohortFigures
{
    private const int Seed = 1000;
    private const int Beats = 20;

    /// <summary>Measures.</summary>
    /// <param name="running">Patients that run twenty beats.</param>
    /// <param name="settling">Patients that are brought to rest.</param>
    /// <param name="pairs">Runs on one thread, each followed by one on two.</param>
    public static void Print(int running, int settling, int pairs)
    {
        FigureTable table = new(
            $"Cohort, {MachineLoad.Words()}", "work", "patients", "threads", "wall s", "patients/s", "simulated s per s", "processor s", "efficiency by wall", "by processor");
        CirculationParameters[] cohort = SupportedPatients.Cohort(running, Seed);
        Pair(table, $"{Beats} beats from a plausible state", cohort, RunBeats, pairs);
        HashSet<CirculationParameters> restless = [];
        Pair(table, "to rest", SupportedPatients.Cohort(settling, Seed), row => Settle(row, restless), pairs);
        table.Print();
        Console.WriteLine(FormattableString.Invariant($"\n{restless.Count} of {settling} patients did not come to rest."));
    }

    private static void Pair(FigureTable table, string work, CirculationParameters[] cohort, Func<CirculationParameters[], double> row, int pairs)
    {
        row(cohort[..EightLanes.Count]);
        (double Wall, double Processor, double Simulated)[][] runs =
            [.. Enumerable.Range(0, pairs).Select(_ => new[] { Run(cohort, row, 1), Run(cohort, row, 2) })];

        // By wall time only what a quiet machine shows counts; by processor time what the threads cost each other, but not idling.
        double busy = new Quartiles([.. runs.Select(static pair => pair[0].Processor / pair[1].Processor)]).Median;
        double efficiency = new Quartiles([.. runs.Select(static pair => pair[0].Wall / (2 * pair[1].Wall))]).Median;
        for (int i = 0; i < 2; i++)
        {
            double wall = new Quartiles([.. runs.Select(pair => pair[i].Wall)]).Median;
            double processor = new Quartiles([.. runs.Select(pair => pair[i].Processor)]).Median;
            table.Add(
                $"{work}", $"{cohort.Length}", $"{i + 1}", $"{wall:F2}", $"{cohort.Length / wall:F0}", $"{runs[0][i].Simulated / wall:F0}",
                $"{processor:F2}", $"{(i == 0 ? 1 : efficiency):P0}", $"{(i == 0 ? 1 : busy):P0}");
        }
    }

    private static (double Wall, double Processor, double Simulated) Run(
        CirculationParameters[] cohort, Func<CirculationParameters[], double> row, int threads)
    {
        CirculationParameters[][] rows = [.. cohort.Chunk(EightLanes.Count)];
        double[] simulated = new double[rows.Length];
        TimeSpan busy = Environment.CpuUsage.TotalTime;
        long from = Stopwatch.GetTimestamp();
        Parallel.For(0, rows.Length, new ParallelOptions { MaxDegreeOfParallelism = threads }, i => simulated[i] = row(rows[i]));
        double wall = Stopwatch.GetElapsedTime(from).TotalSeconds;
        return (wall, (Environment.CpuUsage.TotalTime - busy).TotalSeconds, simulated.Sum());
    }

    private static double RunBeats(CirculationParameters[] row)
    {
        new IntegratorRun<EightLanes>(row, [.. row.Select(InitialState.Of)], Tolerance.Usual.Relative).Beats(Beats);
        return row.Sum(static p => Beats * 60 / p[CirculationParameter.HeartRatePerMin]);
    }

    private static double Settle(CirculationParameters[] row, HashSet<CirculationParameters> restless)
    {
        IReadOnlyList<SettledState> states = CirculationSimulator.Settle(row);
        lock (restless)
        {
            restless.UnionWith(states.Where(static s => !s.Settled).Select(static s => s.Parameters));
        }

        return states.Sum(static s => s.SimulatedS);
    }
}
