using System.Collections.Immutable;
using System.Diagnostics;
using Cavaxis.Mechanics.Insertion;

namespace Cavaxis.Bench;

/// <summary>Wire and cannula into many invented veins, one thread.</summary>
internal static class InsertionFigures
{
    /// <summary>Measures.</summary>
    /// <param name="veins">How many.</param>
    public static void Print(int veins)
    {
        FigureTable table = new(
            $"Wire 450 mm at 5 mm, then cannula 300 mm, then introducer and wire out, {veins} veins, one thread, {MachineLoad.Words()}",
            "body of the wire, N mm²", "friction", "median ms", "slowest ms", "steps not finished", "Newton steps per mm", "largest penetration mm", "MB each");
        Run(1, 500, 0.1, false, 5, null);
        foreach ((double body, double friction, bool guided) in new[] { (300.0, 0.05, false), (300, 0.3, false), (900, 0.1, false), (4000, 0.1, false), (900, 0.1, true) })
        {
            List<double> times = [];
            Run(veins, body, friction, guided, 5, (table, times));
        }

        table.Print();
    }

    private static void Run(int veins, double body, double friction, bool guided, double spacing, (FigureTable Table, List<double> Times)? into)
    {
        InsertionKit kit = new(
            new RodProfile([new RodSection(20, 5, 5, 0.44, 0.44), new RodSection(20, 60, 60, 0.44, 0.44), new RodSection(1500, body, body, 0.44, 0.44)], friction),
            new RodProfile([new RodSection(600, 2500, 2500, 4, 4)], friction),
            new RodProfile([new RodSection(40, 300, 300, 0.6, 3.3), new RodSection(700, 900, 900, 3.3, 3.3)], friction),
            40);
        List<double> times = [];
        List<string> faults = [];
        double deepest = 0;
        double newton = 0;
        long bytes = GC.GetTotalAllocatedBytes(true);
        for (int seed = 0; seed < veins; seed++)
        {
            BlendedVein vein = new(seed);
            InsertionScript script = new(
                kit, new Sleeve(vein.Skin.Point, vein.Skin.Direction, guided ? 40 : 0),
                [InsertionStep.FeedWire(450), InsertionStep.AdvanceCannula(300), InsertionStep.WithdrawIntroducer(1000), InsertionStep.WithdrawWire(1000)]);
            long from = Stopwatch.GetTimestamp();
            ImmutableArray<InsertionReport> reports = Inserter.Run(script, vein, new InsertionSettings { SpacingMm = spacing, IncrementMm = spacing });
            times.Add(Stopwatch.GetElapsedTime(from).TotalMilliseconds);
            newton += reports.Sum(static r => r.NewtonSteps) / 1600.0;
            deepest = Math.Max(deepest, reports.Max(static r => r.PenetrationMm));
            if (!reports[^1].IsDone)
            {
                faults.Add($"{seed}: {reports[^1].Step.Action} at {reports[^1].Done:F1} {reports[^1].Fault!.Cause} {reports[^1].Fault!.Words}");
            }
        }

        if (into is not null)
        {
            times.Sort();
            into.Value.Table.Add(
                $"{body:F0}{(guided ? ", guided tract" : string.Empty)}", $"{friction}", $"{times[times.Count / 2]:F0}", $"{times[^1]:F0}", $"{faults.Count}", $"{newton / veins:F2}", $"{deepest:F3}",
                $"{(GC.GetTotalAllocatedBytes(true) - bytes) / 1e6 / veins:F1}");
            foreach (string fault in faults)
            {
                Console.WriteLine(fault);
            }
        }
    }
}
