using System.Diagnostics;

namespace Cavaxis.Bench;

/// <summary>Measures work by running it over and over after a warm-up.</summary>
/// <param name="budget">Time spent on each piece of work.</param>
internal sealed class Clock(TimeSpan budget)
{
    private const int FewestRuns = 3;

    /// <summary>Runs work for the budget: the first third to warm up, the rest to measure.</summary>
    /// <param name="work">The work.</param>
    /// <returns>Its cost.</returns>
    public Timing Measure(Action work) => Measure(work, 1);

    /// <summary>Measures work too short for a clock by repeating it within a run.</summary>
    /// <param name="work">The work.</param>
    /// <param name="repeats">Calls in one run.</param>
    /// <returns>The cost of one call.</returns>
    public Timing Measure(Action work, int repeats)
    {
        long start = Stopwatch.GetTimestamp();
        do
        {
            Run(work, repeats);
        }
        while (Stopwatch.GetElapsedTime(start) < budget / 3);

        List<double> wall = [];
        List<double> processor = [];
        List<double> bytes = [];
        while (wall.Count < FewestRuns || Stopwatch.GetElapsedTime(start) < budget)
        {
            long allocated = GC.GetTotalAllocatedBytes(precise: true);
            TimeSpan busy = Environment.CpuUsage.TotalTime;
            long from = Stopwatch.GetTimestamp();
            Run(work, repeats);
            wall.Add(Stopwatch.GetElapsedTime(from).TotalMilliseconds / repeats);
            processor.Add((Environment.CpuUsage.TotalTime - busy).TotalMilliseconds / repeats);
            bytes.Add((double)(GC.GetTotalAllocatedBytes(precise: true) - allocated) / repeats);
        }

        return new Timing(wall.Min(), Median(wall), processor.Min(), Median(bytes), wall.Count);
    }

    private static void Run(Action work, int repeats)
    {
        for (int i = 0; i < repeats; i++)
        {
            work();
        }
    }

    private static double Median(List<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }
}
