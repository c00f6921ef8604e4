using Cavaxis.Imaging.Echo;
using Cavaxis.Imaging.Exercises;

namespace Cavaxis.Bench;

/// <summary>Synthetic ultrasound: pictures of 512 × 512 pixels on one core.</summary>
internal static class EchoFigures
{
    private const double BudgetMs = 1000;

    /// <summary>Measures one picture of each kind, and an exercise.</summary>
    /// <param name="clock">The clock.</param>
    public static void Print(Clock clock)
    {
        FigureTable table = new("Synthetic ultrasound, 512 × 512 pixels, one core", "picture", "wall ms", "median ms", "processor ms", "share of 1 s", "MB allocated", "runs");
        foreach (string name in new[] { "cannula-in-bath", "assembly-in-vessel", "wire-put-back-in", "across" })
        {
            DemoScenes.Built(name, out EchoScene scene, out ScanPlane plane, out Probe probe);
            Row(table, name, clock.Measure(() => EchoRenderer.Render(scene, plane, probe, new EchoDisplay())));
        }

        Row(table, "exercise of level 5 (640 × 512)", clock.Measure(static () => ExerciseMaker.Make(3, 5)));
        table.Print();
    }

    private static void Row(FigureTable table, string name, Timing t) =>
        table.Add($"{name}", $"{t.WallMs:F0}", $"{t.MedianMs:F0}", $"{t.ProcessorMs:F0}", $"{t.ProcessorMs / BudgetMs:F2}", $"{t.AllocatedBytes / 1e6:F0}", $"{t.Runs}");
}
