using System.Diagnostics;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Bench;

/// <summary>What one question to the lumen costs.</summary>
internal static class LumenFigures
{
    private const int Points = 20_000;
    private const int Rounds = 7;

    /// <summary>Measures.</summary>
    public static void Print()
    {
        CavalLumen lumen = new(InsertionTrial.Of(0).Shape, 5);
        FigureTable table = new($"One distance with its gradient, one thread, fastest of {Rounds} rounds, {MachineLoad.Words()}", "where", "ns", "B");
        Random chance = new(1);
        Vector3D Aside() => new Vector3D(chance.NextDouble() - 0.5, chance.NextDouble() - 0.5, chance.NextDouble() - 0.5).Unit;
        Vector3D[] on = [.. Enumerable.Range(0, Points).Select(i =>
        {
            double arc = lumen.Trunk.StartMm + (chance.NextDouble() * (lumen.Trunk.EndMm - lumen.Trunk.StartMm));
            return lumen.Trunk.PointAt(arc) + (0.9 * lumen.Trunk.RadiusAt(arc) * Aside());
        })];
        Vector3D[] heart = [.. Enumerable.Range(0, Points).Select(_ => lumen.ValveCentreMm + (60 * chance.NextDouble() * Aside()))];
        Row(table, "whole lumen, along the trunk near its wall", lumen, on);
        Row(table, "whole lumen, within 6 cm of the valve", lumen, heart);
        Row(table, "trunk alone", lumen.Trunk, on);
        table.Print();
    }

    private static void Row(FigureTable table, string where, ILumen lumen, Vector3D[] points)
    {
        double best = double.PositiveInfinity;
        double sum = 0;
        long bytes = 0;
        for (int round = 0; round < Rounds; round++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            long from = Stopwatch.GetTimestamp();
            foreach (Vector3D point in points)
            {
                sum += lumen.At(point).DistanceMm;
            }

            best = Math.Min(best, Stopwatch.GetElapsedTime(from).TotalNanoseconds / points.Length);
            bytes = (GC.GetAllocatedBytesForCurrentThread() - before) / points.Length;
        }

        if (double.IsFinite(sum))
        {
            table.Add($"{where}", $"{best:F0}", $"{bytes}");
        }
    }
}
