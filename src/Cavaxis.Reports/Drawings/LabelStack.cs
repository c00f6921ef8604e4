namespace Cavaxis.Reports.Drawings;

/// <summary>
/// Places labels along a line so that none overlap and each lies as near as can be to where it belongs: least squares
/// under order and distance constraints. Subtracting the room of the labels before turns it into isotonic regression,
/// solved exactly by pooling adjacent violators (Barlow, Bartholomew, Bremner and Brunk 1972, from memory); bounds are
/// met by clamping that solution, which keeps it optimal.
/// </summary>
internal static class LabelStack
{
    /// <summary>Middles of labels without overlap.</summary>
    /// <param name="wanted">Where each label's middle belongs; any order.</param>
    /// <param name="sizes">Room of each label along the line, gap included.</param>
    /// <param name="low">Lowest place that any label may touch.</param>
    /// <param name="high">Highest place that any label may touch; widened where the labels need more.</param>
    /// <returns>Middles, in the order given; labels keep the order of their wanted places.</returns>
    internal static double[] Place(IReadOnlyList<double> wanted, IReadOnlyList<double> sizes, double low, double high)
    {
        int n = wanted.Count;
        int[] order = [.. Enumerable.Range(0, n).OrderBy(i => wanted[i]).ThenBy(i => i)];
        double[] before = new double[n];
        double used = 0;
        for (int k = 0; k < n; k++)
        {
            before[k] = used + (sizes[order[k]] / 2);
            used += sizes[order[k]];
        }

        double[] fitted = Isotonic([.. order.Select((i, k) => wanted[i] - before[k])]);
        double room = Math.Max(low, high - used);
        double[] placed = new double[n];
        for (int k = 0; k < n; k++)
        {
            placed[order[k]] = Math.Clamp(fitted[k], low, room) + before[k];
        }

        return placed;
    }

    private static double[] Isotonic(double[] values)
    {
        var pools = new Stack<(double Sum, int Count)>();
        foreach (double value in values)
        {
            (double Sum, int Count) pool = (value, 1);
            while (pools.TryPeek(out (double Sum, int Count) last) && last.Sum / last.Count >= pool.Sum / pool.Count)
            {
                pools.Pop();
                pool = (pool.Sum + last.Sum, pool.Count + last.Count);
            }

            pools.Push(pool);
        }

        return [.. pools.Reverse().SelectMany(p => Enumerable.Repeat(p.Sum / p.Count, p.Count))];
    }
}
