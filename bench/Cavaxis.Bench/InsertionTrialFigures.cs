using System.Diagnostics;
using Cavaxis.Planning.Insertion;

namespace Cavaxis.Bench;

/// <summary>Whole insertions into many random adults: what is not followed to its end and why, how deep any node lies in a wall at any time.</summary>
internal static class InsertionTrialFigures
{
    /// <summary>Measures.</summary>
    /// <param name="anatomies">How many adults.</param>
    public static void Print(int anatomies)
    {
        InsertionTrial[] trials = [.. Enumerable.Range(0, anatomies).Select(InsertionTrial.Of)];
        AnatomyOutcome[] outcomes = new AnatomyOutcome[anatomies];
        double[] ms = new double[anatomies];
        trials[0].Run();
        TimeSpan busy = Environment.CpuUsage.TotalTime;
        long from = Stopwatch.GetTimestamp();
        Parallel.For(0, anatomies, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i =>
        {
            double start = ThreadClock.NowMs;
            outcomes[i] = trials[i].Run();
            ms[i] = ThreadClock.NowMs - start;
        });
        double wall = Stopwatch.GetElapsedTime(from).TotalSeconds;
        double processor = (Environment.CpuUsage.TotalTime - busy).TotalSeconds;
        FigureTable table = new(
            FormattableString.Invariant($"Insertions into {anatomies} random adults, 2 threads, {wall:F0} s wall, {processor:F0} s processor, {MachineLoad.Words()}"),
            "way", "anatomies", $"median ms, {ThreadClock.Words}", "nine tenths below ms", "slowest ms", "not followed", "deepest node mm");
        foreach (IGrouping<string, int> way in Enumerable.Range(0, anatomies).GroupBy(i => trials[i].Way).Append(new Everything(anatomies)))
        {
            int[] of = [.. way];
            double[] times = [.. of.Select(i => ms[i])];
            table.Add(
                $"{way.Key}", $"{of.Length}", $"{new Quartiles(times).Median:F0}", $"{times.Order().ElementAt(9 * times.Length / 10):F0}", $"{times.Max():F0}", $"{of.Count(i => outcomes[i].Fault.Length > 0)}",
                $"{of.Max(i => outcomes[i].PenetrationMm):F4}");
        }

        table.Print();
        Console.WriteLine();
        foreach (IGrouping<string, int> reason in Enumerable.Range(0, anatomies).Where(i => outcomes[i].Fault.Length > 0).GroupBy(i => outcomes[i].Fault).OrderByDescending(static g => g.Count()))
        {
            Console.WriteLine($"{reason.Count()} x {reason.Key}: trials {string.Join(", ", reason.Take(20))}");
        }
    }

    private sealed class Everything(int count) : IGrouping<string, int>
    {
        public string Key => "all";

        public IEnumerator<int> GetEnumerator() => Enumerable.Range(0, count).GetEnumerator();

        System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
