using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// What a millimetre of way costs in a scan: little where it looks like the seeds or between them, more the less it does, and more near the
/// edge of what does. The distance to that edge, up to the radius of a vein, is the measure of a vessel that is used: it is largest along the
/// middle of a vein and even inside of the atrium, so that the way keeps to the middle of the veins and goes straight through the atrium.
/// </summary>
internal static class LumenCost
{
    private const double MostAway = 5;
    private const double EdgeCost = 6;
    private const int Layers = 4;

    /// <summary>Builds it.</summary>
    /// <param name="grid">The smoothed scan.</param>
    /// <param name="lowHu">Lower of the values at the seeds, HU.</param>
    /// <param name="highHu">Higher of the values at the seeds, HU.</param>
    /// <param name="toleranceHu">What differs by more does not look like them, HU.</param>
    /// <returns>The field.</returns>
    public static TravelCost Of(ScanGrid grid, double lowHu, double highHu, double toleranceHu)
    {
        ReadOnlySpan<float> values = grid.Values;
        float[] cost = new float[values.Length];
        byte[] depth = new byte[values.Length];
        for (int at = 0; at < cost.Length; at++)
        {
            double away = Math.Max(0, Math.Max(lowHu - values[at], values[at] - highHu)) / toleranceHu;
            away = Math.Min(away, MostAway);
            cost[at] = (float)(1 + (2 * away * away));
            depth[at] = away < 1 ? (byte)1 : (byte)0;
        }

        // Layer by layer from the edge inwards.
        int sx = 1;
        int sy = grid.CountX;
        int sz = grid.CountX * grid.CountY;
        for (byte layer = 1; layer < Layers; layer++)
        {
            byte[] next = [.. depth];
            for (int at = sz; at < depth.Length - sz; at++)
            {
                if (depth[at] == layer && depth[at - sx] >= layer && depth[at + sx] >= layer && depth[at - sy] >= layer && depth[at + sy] >= layer
                    && depth[at - sz] >= layer && depth[at + sz] >= layer)
                {
                    next[at] = (byte)(layer + 1);
                }
            }

            depth = next;
        }

        for (int at = 0; at < cost.Length; at++)
        {
            double edge = 1 - (depth[at] / (double)Layers);
            cost[at] += (float)(EdgeCost * edge * edge);
        }

        return new TravelCost(grid.Origin, grid.StepMm, grid.CountX, grid.CountY, grid.CountZ, cost);
    }

    /// <summary>The part of the scan in which a way between two seeds is looked for.</summary>
    /// <param name="sampler">The scan.</param>
    /// <param name="one">A seed, mm.</param>
    /// <param name="other">The other, mm.</param>
    /// <param name="asideMm">How far beside the seeds, mm.</param>
    /// <param name="beyondMm">How far above and below them, mm.</param>
    /// <param name="stepMm">Edge of a cube, mm.</param>
    /// <param name="shiftMm">Shift of the cubes, mm.</param>
    /// <returns>The grid, not smoothed.</returns>
    public static ScanGrid Box(ScanSampler sampler, Vector3D one, Vector3D other, double asideMm, double beyondMm, double stepMm, double shiftMm)
    {
        Vector3D low = new(Math.Min(one.X, other.X) - asideMm + shiftMm, Math.Min(one.Y, other.Y) - asideMm + shiftMm, Math.Min(one.Z, other.Z) - beyondMm + shiftMm);
        Vector3D high = new(Math.Max(one.X, other.X) + asideMm + shiftMm, Math.Max(one.Y, other.Y) + asideMm + shiftMm, Math.Max(one.Z, other.Z) + beyondMm + shiftMm);
        return ScanGrid.Of(sampler, low, high, stepMm);
    }
}
