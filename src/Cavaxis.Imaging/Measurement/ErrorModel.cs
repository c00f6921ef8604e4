using Cavaxis.Imaging.Calibration;

namespace Cavaxis.Imaging.Measurement;

/// <summary>
/// Errors of a number f(points) to first order. Placing: each coordinate of each point errs by itself, σ² = Σ (∂f/∂x)² (s σₚ)², s the step of that direction. Scale: a
/// relative error r of the steps moves f by Σ x ∂f/∂x and Σ y ∂f/∂y; the two are added before they are squared where rows and columns err together, after it where each errs by itself.
/// </summary>
internal static class ErrorModel
{
    private const double StepShare = 1e-4;

    /// <summary>Value and both parts of its standard deviation.</summary>
    /// <param name="points">Points, pixels.</param>
    /// <param name="scale">The scale.</param>
    /// <param name="placementSdPx">Error of a placed point, pixels.</param>
    /// <param name="function">The number, from points in mm.</param>
    /// <returns>Value, standard deviation by placing and by scale.</returns>
    public static (double Value, double PlacementSd, double ScaleSd) Of(IReadOnlyList<PixelPoint> points, LengthScale scale, double placementSdPx, Func<ReadOnlySpan<double>, double> function)
    {
        double[] mm = InMm(points, scale);
        double value = function(mm);
        double placing = 0;
        double alongX = 0;
        double alongY = 0;
        for (int i = 0; i < mm.Length; i++)
        {
            bool isX = i % 2 == 0;
            double step = StepShare * (isX ? scale.MmPerColumn : scale.MmPerRow);
            double here = mm[i];
            mm[i] = here + step;
            double above = function(mm);
            mm[i] = here - step;
            double slope = (above - function(mm)) / (2 * step);
            mm[i] = here;
            double moved = slope * placementSdPx * (isX ? scale.MmPerColumn : scale.MmPerRow);
            placing += moved * moved;

            // From the first point: no measure changes when everything is shifted, and so rounding stays small.
            alongX += isX ? slope * (here - mm[0]) : 0;
            alongY += isX ? 0 : slope * (here - mm[1]);
        }

        double byScale = scale.RelativeSd * (scale.ErrsAsOne ? Math.Abs(alongX + alongY) : Math.Sqrt((alongX * alongX) + (alongY * alongY)));
        return (value, Math.Sqrt(placing), byScale);
    }

    /// <summary>Points in mm.</summary>
    public static double[] InMm(IReadOnlyList<PixelPoint> points, LengthScale scale)
    {
        double[] mm = new double[2 * points.Count];
        for (int i = 0; i < points.Count; i++)
        {
            mm[2 * i] = points[i].X * scale.MmPerColumn;
            mm[(2 * i) + 1] = points[i].Y * scale.MmPerRow;
        }

        return mm;
    }
}
