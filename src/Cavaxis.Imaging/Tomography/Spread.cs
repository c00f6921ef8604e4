namespace Cavaxis.Imaging.Tomography;

/// <summary>Median, and spread by the median absolute deviation: 1.4826 times it is the standard deviation of a Gaussian.</summary>
internal static class Spread
{
    private const double ToGaussian = 1.4826;

    /// <summary>Both, of numbers that need no order.</summary>
    /// <param name="numbers">One or more.</param>
    /// <returns>Median and spread.</returns>
    public static (double Median, double Sd) Of(IEnumerable<double> numbers)
    {
        double[] sorted = [.. numbers.Order()];
        double median = Middle(sorted);
        double[] away = [.. sorted.Select(n => Math.Abs(n - median)).Order()];
        return (median, ToGaussian * Middle(away));
    }

    /// <summary>The median.</summary>
    /// <param name="numbers">One or more.</param>
    /// <returns>The median.</returns>
    public static double Median(IEnumerable<double> numbers) => Middle([.. numbers.Order()]);

    private static double Middle(double[] sorted) => sorted.Length == 0
        ? double.NaN
        : 0.5 * (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]);
}
