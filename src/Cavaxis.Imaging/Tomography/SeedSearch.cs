using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// Seeds without a person, where contrast allows: the one even bright column from head to feet. That it is the vein, a person must say; where
/// there is more than one (an artery, the spine) it says that it cannot.
/// </summary>
public static class SeedSearch
{
    private const double GridMm = 3;
    private const double BrightHu = 120;
    private const double BrightestHu = 700;
    private const double SmallestMm2 = 40;
    private const double LargestMm2 = 2500;
    private const double LeastEven = 0.4;
    private const double LevelShare = 0.7;
    private const double LeastFilled = 0.55;
    private const double MostShiftMm = 9;
    private const double LeastSpanMm = 90;

    /// <summary>Looks for them.</summary>
    /// <param name="scan">The scan.</param>
    /// <returns>Two seeds to be looked at by a person, or why there are none.</returns>
    public static (IReadOnlyList<Vector3D> Seeds, TraceFailure? Failure) Find(ScanVolume scan)
    {
        ArgumentNullException.ThrowIfNull(scan);
        ScanGrid grid = Whole(scan);
        List<List<BrightBlob>> columns = [];
        for (int k = 0; k < grid.CountZ; k++)
        {
            foreach (BrightBlob blob in Blobs(grid, k))
            {
                List<BrightBlob>? below = columns.Where(c => c[^1].Level == k - 1).MinBy(c => Aside(c[^1], blob));
                if (below is not null && Aside(below[^1], blob) <= MostShiftMm)
                {
                    below.Add(blob);
                }
                else
                {
                    columns.Add([blob]);
                }
            }
        }

        List<List<BrightBlob>> tall = [.. columns.Where(static c => (c.Count - 1) * GridMm >= LeastSpanMm).OrderByDescending(Brightness)];
        return tall.Count == 0
                ? ([], new TraceFailure(TraceFault.NoColumn, FormattableString.Invariant(
                    $"No even column between {BrightHu:F0} and {BrightestHu:F0} HU reaches over {LeastSpanMm:F0} mm: without contrast the veins are not found by themselves. Give two seeds.")))
            : tall.Count > 1
                ? ([], new TraceFailure(TraceFault.NoColumn, FormattableString.Invariant(
                    $"{tall.Count} columns are bright, the first two with {Brightness(tall[0]):F0} and {Brightness(tall[1]):F0} HU: vein, artery and spine cannot be told apart by brightness. Give two seeds.")))
            : ([tall[0][^2].Middle, tall[0][1].Middle], null);
    }

    private static double Brightness(List<BrightBlob> column) => Spread.Median(column.Select(static b => b.MeanHu));

    private static double Aside(BrightBlob one, BrightBlob other)
    {
        Vector3D off = other.Middle - one.Middle;
        return Math.Sqrt((off.X * off.X) + (off.Y * off.Y));
    }

    private static ScanGrid Whole(ScanVolume scan)
    {
        Vector3D[] corners = [.. Enumerable.Range(0, 8).Select(c => scan.Place((c & 1) * (scan.Columns - 1), ((c >> 1) & 1) * (scan.Rows - 1), (c >> 2) * (scan.Slices - 1)))];
        Vector3D low = new(corners.Min(static c => c.X), corners.Min(static c => c.Y), corners.Min(static c => c.Z));
        Vector3D high = new(corners.Max(static c => c.X), corners.Max(static c => c.Y), corners.Max(static c => c.Z));
        return ScanGrid.Of(new ScanSampler(scan), low, high, GridMm).Smoothed(1);
    }

    private static IEnumerable<BrightBlob> Blobs(ScanGrid grid, int k)
    {
        int nx = grid.CountX;
        int ny = grid.CountY;
        float[] level = grid.Values.Slice(k * nx * ny, nx * ny).ToArray();
        bool[] seen = new bool[level.Length];
        Stack<int> open = new();
        for (int start = 0; start < level.Length; start++)
        {
            if (seen[start] || level[start] is < (float)BrightHu or > (float)BrightestHu)
            {
                continue;
            }

            List<int> patch = [];
            seen[start] = true;
            open.Push(start);
            while (open.TryPop(out int at))
            {
                patch.Add(at);
                foreach (int next in Beside(at, nx, ny))
                {
                    if (!seen[next] && level[next] >= BrightHu)
                    {
                        seen[next] = true;
                        open.Push(next);
                    }
                }
            }

            if (Even(grid, level, patch, k) is BrightBlob blob)
            {
                yield return blob;
            }
        }
    }

    private static IEnumerable<int> Beside(int at, int nx, int ny)
    {
        int x = at % nx;
        int y = at / nx;
        if (x > 0)
        {
            yield return at - 1;
        }

        if (x < nx - 1)
        {
            yield return at + 1;
        }

        if (y > 0)
        {
            yield return at - nx;
        }

        if (y < ny - 1)
        {
            yield return at + nx;
        }
    }

    private static BrightBlob? Even(ScanGrid grid, float[] level, List<int> patch, int k)
    {
        double area = patch.Count * GridMm * GridMm;
        if (area is < SmallestMm2 or > LargestMm2)
        {
            return null;
        }

        int nx = grid.CountX;
        double wide = patch.Max(p => p % nx) - patch.Min(p => p % nx) + 1;
        double high = patch.Max(p => p / nx) - patch.Min(p => p / nx) + 1;
        double[] bright = [.. patch.Select(p => (double)level[p]).OrderDescending()];
        double full = bright[bright.Length / 10];

        // The rim of a small patch is half outside; what is even is the share that is nearly as bright as the brightest.
        double even = bright.Count(hu => hu > LevelShare * full) / (double)bright.Length;
        bool round = patch.Count / (wide * high) >= LeastFilled && Math.Max(wide, high) <= 2.5 * Math.Min(wide, high);
        Vector3D place = grid.Origin + (GridMm * new Vector3D(patch.Average(p => p % nx), patch.Average(p => p / nx), k));
        return round && even >= LeastEven ? new BrightBlob(k, place, full, area) : null;
    }
}
