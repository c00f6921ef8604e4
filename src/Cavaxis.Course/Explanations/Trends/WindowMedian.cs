using Cavaxis.Quantities;

namespace Cavaxis.Course.Explanations.Trends;

/// <summary>Middle of the readings of a window with its error.</summary>
internal static class WindowMedian
{
    // Standard deviation of a normal sample over its median absolute deviation.
    private const double PerDeviation = 1.4826;

    // Standard error of the median over that of the mean, large normal samples: √(π/2).
    private const double MedianLoss = 1.2533141373155003;

    // What many readings of one line or probe have in common does not average out. Assumption: a third of the spread of one.
    private const double Common = 0.3;

    /// <summary>The median; null without a reading.</summary>
    public static Estimate? Of(IReadOnlyList<TimedReading> readings)
    {
        if (readings.Count == 0)
        {
            return null;
        }

        double reading = readings.Average(static r => r.Sd);
        double middle = Median([.. readings.Select(static r => r.Value)]);
        double scatter = readings.Count < 4 ? reading : Math.Max(reading, PerDeviation * Median([.. readings.Select(r => Math.Abs(r.Value - middle))]));

        // The median of one or two is their mean.
        double loss = readings.Count < 3 ? 1 : MedianLoss;
        double error = loss * scatter / Math.Sqrt(readings.Count);
        return Estimate.Normal(middle, Math.Sqrt((error * error) + (readings.Count == 1 ? 0 : Common * Common * reading * reading)), Origin.Measured);
    }

    private static double Median(double[] values)
    {
        Array.Sort(values);
        return Estimate.Quantile(values, 0.5);
    }
}
