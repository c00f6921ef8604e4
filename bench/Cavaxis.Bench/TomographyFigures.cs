using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Bench;

/// <summary>From a scan of 300 slices of 512 × 512 to the axis.</summary>
internal static class TomographyFigures
{
    private const int Wide = 512;
    private const int Slices = 300;
    private const double PixelMm = 0.75;
    private const double BudgetMs = 10_000;

    /// <summary>Measures the trace, the search for seeds and the pictures.</summary>
    /// <param name="clock">The clock.</param>
    public static void Print(Clock clock)
    {
        ScanVolume scan = Made();
        TraceRequest request = new([new Vector3D(0, 0, 130), new Vector3D(0, 0, -130)]);
        AxisTrace trace = AxisTracer.Trace(scan, request);
        FigureTable table = new(
            FormattableString.Invariant($"Tomography, {Slices} slices of {Wide} × {Wide}, all cores; line of {trace.Axis?.Line.LengthMm ?? double.NaN:F0} mm"), "what", "wall ms", "median ms", "processor ms", "share of 10 s", "MB allocated", "runs");
        Row(table, "two seeds to axis", clock.Measure(() => AxisTracer.Trace(scan, request)));
        Row(table, "search for seeds", clock.Measure(() => SeedSearch.Find(scan)));
        if (trace.Axis is TracedAxis axis)
        {
            GreyWindow window = GreyWindow.ForBlood(250);
            Row(table, "three planes and the veins laid straight", clock.Measure(() =>
            {
                foreach (ViewPlane plane in Enum.GetValues<ViewPlane>())
                {
                    _ = AxisPictures.Plane(scan, plane, Vector3D.Zero, window, axis);
                }

                _ = AxisPictures.Straightened(scan, axis, window);
            }));
        }

        table.Print();
    }

    private static void Row(FigureTable table, string what, Timing t) =>
        table.Add($"{what}", $"{t.WallMs:F0}", $"{t.MedianMs:F0}", $"{t.ProcessorMs:F0}", $"{t.WallMs / BudgetMs:F3}", $"{t.AllocatedBytes / 1e6:F0}", $"{t.Runs}");

    private static ScanVolume Made()
    {
        short[] values = new short[Wide * Wide * Slices];
        double half = PixelMm * (Wide - 1) / 2;
        _ = Parallel.For(0, Slices, k =>
        {
            Random chance = new(k);
            double z = k - ((Slices - 1) / 2.0);
            double radius = Math.Abs(z) < 32 ? Math.Max(9, 22 * Math.Sqrt(1 - (z * z / (32 * 32)))) : 9;
            for (int j = 0; j < Wide; j++)
            {
                for (int i = 0; i < Wide; i++)
                {
                    double from = Math.Sqrt(Math.Pow((i * PixelMm) - half, 2) + Math.Pow((j * PixelMm) - half, 2));
                    double hu = from > 150 ? -1000 : 45 + (200 * Math.Clamp(0.5 + ((radius - from) / PixelMm), 0, 1));
                    values[(((k * Wide) + j) * Wide) + i] = (short)(hu + (60 * (chance.NextDouble() + chance.NextDouble() - 1)));
                }
            }
        });
        return new ScanVolume(Wide, Wide, Slices, values, new(-half, -half, -(Slices - 1) / 2.0), new(PixelMm, 0, 0), new(0, PixelMm, 0), new(0, 0, 1));
    }
}
