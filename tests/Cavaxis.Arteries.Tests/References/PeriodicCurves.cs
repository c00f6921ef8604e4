namespace Cavaxis.Arteries.Tests.References;

/// <summary>Two curves over one period, point by point each millisecond. Before they are compared one is moved by whole milliseconds until it fits best.</summary>
internal static class PeriodicCurves
{
    private const int MostShift = 100;

    /// <summary>Root mean square of the relative difference at every point, in percent.</summary>
    public static double RelativePercent(double[] curve, double[] reference) => Best(curve, reference, static (a, b) => (a - b) / b);

    /// <summary>Root mean square of the difference over the reference's largest value, in percent.</summary>
    public static double PercentOfLargest(double[] curve, double[] reference)
    {
        double largest = reference.Max();
        return Best(curve, reference, (a, b) => (a - b) / largest);
    }

    private static double Best(double[] curve, double[] reference, Func<double, double, double> difference) =>
        Enumerable.Range(-MostShift, (2 * MostShift) + 1).Min(shift => 100 * Math.Sqrt(Enumerable.Range(0, reference.Length)
            .Average(i => Math.Pow(difference(curve[(i + shift + curve.Length) % curve.Length], reference[i]), 2))));
}
