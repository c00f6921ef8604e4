namespace Cavaxis.Planning.Fit;

/// <summary>The one depth that suits most of the sampled anatomies.</summary>
/// <param name="DepthMm">The depth; the middle of the best stretch where several suit equally.</param>
/// <param name="SuitedCount">Number of anatomies with every port in its zone at that depth.</param>
internal readonly record struct DepthChoice(double DepthMm, int SuitedCount)
{
    private const double StepMm = 1;

    /// <summary>Sweeps all depths in steps of a millimetre and counts by differences: one pass over the anatomies.</summary>
    /// <param name="windows">Depth windows of the cannula.</param>
    /// <returns>The best depth.</returns>
    public static DepthChoice Of(DepthWindows windows)
    {
        int steps = (int)Math.Floor(windows.DeepestMm / StepMm) + 1;
        int[] change = new int[steps + 1];
        for (int i = 0; i < windows.Low.Length; i++)
        {
            // A depth on the millimetre grid suits when it lies in the window; a narrower window suits none.
            int first = (int)Math.Ceiling(windows.Low[i] / StepMm);
            int last = (int)Math.Floor(windows.High[i] / StepMm);
            if (first <= last && first < steps && last >= 0)
            {
                change[Math.Max(0, first)]++;
                change[Math.Min(steps - 1, last) + 1]--;
            }
        }

        int count = 0;
        int best = -1;
        int from = 0;
        int to = 0;
        for (int step = 0; step < steps; step++)
        {
            count += change[step];
            if (count > best)
            {
                (best, from, to) = (count, step, step);
            }
            else if (count == best && to == step - 1)
            {
                to = step;
            }
        }

        // Where nothing suits anywhere, the deepest reachable position is the honest answer.
        return best <= 0 ? new DepthChoice(windows.DeepestMm, 0) : new DepthChoice((from + to) / 2.0 * StepMm, best);
    }
}
