using System.Globalization;
using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Solver;

namespace Cavaxis.Bench;

/// <summary>A converged beat of the published adult tree of 77 segments, against real time and against the same scheme in C.</summary>
internal static class ArteryFigures
{
    private const double Period = 1.0;
    private const double Start = 13_430;
    private const int SettleBeats = 16;
    private const int BeatsInRun = 5;

    /// <summary>Measures; says so where the table or the compiler is not there.</summary>
    /// <param name="pairs">Runs of each, in turn.</param>
    public static void Print(int pairs)
    {
        string table = Path.Combine(RepositoryFolder.Path, "..", "shared", "reference", "arteries");
        table = Directory.Exists(table) ? table : Path.Combine(RepositoryFolder.Path, "..", "..", "shared", "reference", "arteries");
        if (!Directory.Exists(table))
        {
            Console.WriteLine("\nThe table of the adult tree is not here: shared/reference/arteries beside the repository.");
            return;
        }

        string[][] rows = [.. File.ReadLines(Path.Combine(table, "adan56-json", "adan56_table.csv")).Skip(1).Select(static l => l.Split(','))];
        double[][] wave = [.. File.ReadLines(Path.Combine(table, "openbf", "adan56_inlet.dat")).Select(static l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Number).ToArray())];
        FigureTable figures = new(
            $"Arteries, a converged beat of 1 s of the adult tree of 77 segments, one thread, {ThreadClock.Words} ms, {pairs} pairs, {MachineLoad.Words()}",
            "cells at most", "cells", "steps", "beat ms", "with two tracers", "transport alone", "times real time", "C -O2 ms", "ours over C -O2 (quartiles)", "C -O3 native ms", "ours over it", "largest difference of area");
        foreach (double cell in (double[])[0.01, 0.005])
        {
            Row(figures, rows, wave, cell, pairs);
        }

        figures.Print();
    }

    private static void Row(FigureTable figures, string[][] rows, double[][] wave, double cell, int pairs)
    {
        ArterialSimulation simulation = Simulation(rows, wave, cell, []);
        double[] areas = [.. simulation.State.Area];
        using ArteryProgram? plain = ArteryProgram.Compile("-O2"), native = ArteryProgram.Compile("-O3", "-march=native");
        if (plain is null || native is null)
        {
            Console.WriteLine("\nNo comparison with C: gcc is not here.");
            return;
        }

        string input = plain.Write(simulation.Grid, areas, [.. simulation.Network.OpenNodes.Select(n => End(rows, n))], wave, 0.9);
        string nativeInput = native.Write(simulation.Grid, areas, [.. simulation.Network.OpenNodes.Select(n => End(rows, n))], wave, 0.9);
        for (int beat = 0; beat < SettleBeats; beat++)
        {
            simulation.Advance(Period);
        }

        double[] settled = [.. simulation.Grid.Cells().Select(i => simulation.State.Area[i])];
        double difference = plain.Run(input, SettleBeats, 1).Areas.Zip(settled, static (a, b) => Math.Abs(a - b) / b).Max();
        ArterialSimulation carrying = Simulation(rows, wave, cell, [0, 1]);
        carrying.Advance(SettleBeats * Period);
        BeatTransport transport = BeatTransport.Record(carrying, Period);
        double[] ours = new double[pairs], optimised = new double[pairs], vectorised = new double[pairs], tracers = new double[pairs], alone = new double[pairs];
        long steps = 0;
        for (int pair = 0; pair < pairs; pair++)
        {
            ours[pair] = Best(() => simulation.Advance(Period));
            (optimised[pair], steps, _) = plain.Run(input, 2, BeatsInRun);
            vectorised[pair] = native.Run(nativeInput, 2, BeatsInRun).Ms;
            tracers[pair] = Best(() => carrying.Advance(Period));
            alone[pair] = Best(() => transport.Beat());
        }

        Quartiles ratio = new([.. ours.Zip(optimised, static (a, b) => a / b)]), nativeRatio = new([.. ours.Zip(vectorised, static (a, b) => a / b)]);
        double ms = new Quartiles(ours).Median;
        figures.Add(
            $"{1000 * cell:F0} mm", $"{simulation.CellCount}", $"{steps}", $"{ms:F1}", $"{new Quartiles(tracers).Median:F1}", $"{new Quartiles(alone).Median:F1}", $"{1000 * Period / ms:F1}",
            $"{new Quartiles(optimised).Median:F1}", $"{ratio.Median:F2} ({ratio.Low:F2} to {ratio.High:F2})", $"{new Quartiles(vectorised).Median:F1}", $"{nativeRatio.Median:F2}", $"{difference:0.0E0}");
    }

    private static double Best(Action beat) => Enumerable.Range(0, BeatsInRun).Min(_ =>
    {
        double from = ThreadClock.NowMs;
        beat();
        return ThreadClock.NowMs - from;
    });

    private static ArterialSimulation Simulation(string[][] rows, double[][] wave, double cell, double[] tracers)
    {
        Dictionary<string, string> parent = rows.SelectMany(static r => r[9].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(c => (c, r[0]))).ToDictionary(static p => p.c, static p => p.Item2);
        ArterialNetwork network = new(
            [.. rows.Select(r => new ArterialSegment(
                r[1], parent.TryGetValue(r[0], out string? above) ? $"n{above}" : "root", $"n{r[0]}", Number(r[2]), Number(r[3]), Number(r[4]), Wall(Number(r[3])), Wall(Number(r[4])), 225e3, 10_000))],
            new BloodFluid(1040, 0.004, 2));
        PeriodicWave inflow = new([.. wave.Select(static w => w[0])], [.. wave.Select(static w => w[1])]);
        return new ArterialSimulation(new ArterialSetup(
            network,
            [
                new("root", new FlowInlet(inflow.At), new ConstantBlood([.. tracers.Select(static c => 1 - c)])),
                .. rows.Where(static r => r[9].Length == 0).Select(r => new EndSpecification($"n{r[0]}", new Windkessel(Number(r[10]), Number(r[11]), Number(r[12]), 0, Start))),
            ],
            Start)
        { CellLength = cell, InitialTracers = tracers });
    }

    private static double[] End(string[][] rows, string node) =>
        node == "root" ? [-1, 1, 1, 0] : rows.Where(r => $"n{r[0]}" == node).Select(static r => (double[])[Number(r[10]), Number(r[11]), Number(r[12]), Start]).Single();

    // The radius function of the published tree, mechanics-and-arteries.md a.2.
    private static double Wall(double radius) => radius * ((0.2802 * Math.Exp(-505.3 * radius)) + (0.1324 * Math.Exp(-11.14 * radius)));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
