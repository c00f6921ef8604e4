using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;

namespace Cavaxis.Bench;

/// <summary>Whole plans: all configurations, the built-in catalogue, many anatomies.</summary>
internal static class PlanFigures
{
    private static readonly int[] Counts = [1_000, 10_000, 100_000];

    /// <summary>Each demo case with the usual number of anatomies.</summary>
    /// <param name="clock">The clock.</param>
    public static void Cases(Clock clock)
    {
        FigureTable table = new(
            "Plan, 10 000 anatomies, warm", "case", "wall ms", "median ms", "processor ms", "MB", "B/anatomy", "B/anatomy and choice", "ns/anatomy and choice");
        foreach ((string path, CaseFile caseFile) in DemoCases.All)
        {
            PlanningOptions options = new();
            Timing t = clock.Measure(() => Plan(caseFile, options));
            double anatomies = options.Anatomies;
            double each = anatomies * Choices;
            table.Add(
                $"{Path.GetFileNameWithoutExtension(path)}", $"{t.WallMs:F0}", $"{t.MedianMs:F0}", $"{t.ProcessorMs:F0}", $"{t.AllocatedBytes / 1e6:F1}",
                $"{t.AllocatedBytes / anatomies:F0}", $"{t.AllocatedBytes / each:F2}", $"{t.ProcessorMs * 1e6 / each:F1}");
        }

        table.Print();
    }

    /// <summary>One case with more and more anatomies: what one more anatomy costs.</summary>
    /// <param name="clock">The clock.</param>
    public static void Growth(Clock clock)
    {
        (string path, CaseFile caseFile) = DemoCases.All[^1];
        FigureTable table = new(
            $"Growth with the number of anatomies, {Path.GetFileNameWithoutExtension(path)}", "anatomies", "wall ms", "processor ms", "MB", "one more: us of processor", "one more: B");
        Timing? before = null;
        for (int i = 0; i < Counts.Length; i++)
        {
            PlanningOptions options = new() { Anatomies = Counts[i] };
            Timing t = clock.Measure(() => Plan(caseFile, options));
            int more = Counts[i] - (i == 0 ? 0 : Counts[i - 1]);
            table.Add(
                $"{Counts[i]}", $"{t.WallMs:F0}", $"{t.ProcessorMs:F0}", $"{t.AllocatedBytes / 1e6:F1}",
                $"{(t.ProcessorMs - (before?.ProcessorMs ?? 0)) * 1e3 / more:F2}", $"{(t.AllocatedBytes - (before?.AllocatedBytes ?? 0)) / more:F0}");
            before = t;
        }

        table.Print();
    }

    /// <summary>Device-and-side choices over all slots of all configurations; some are dropped early because they are too wide.</summary>
    private static int Choices { get; } = ConfigurationTable.All
        .SelectMany(configuration => configuration.Slots)
        .Sum(slot => 2 * DeviceCatalogue.BuiltIn.Cannulae.Count(cannula => slot.Families.Contains(cannula.Family)));

    private static void Plan(CaseFile caseFile, PlanningOptions options) =>
        Planner.Plan(caseFile, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, options);
}
