using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Quantities;

/// <summary>A counted share with Wilson's interval (1927), which is sound at none and at all.</summary>
public static class WilsonShare
{
    /// <summary>Standard normal quantile of the central 95 % interval: Φ⁻¹(0.975).</summary>
    public const double NormalQuantile975 = 1.9599639845400542;

    /// <summary>The share, calculated, with its 90 % interval from the counts alone.</summary>
    /// <param name="count">How many, 0 to all.</param>
    /// <param name="of">Of how many, at least one.</param>
    /// <returns>The share between 0 and 1; its standard deviation is that of the plain share, zero at none and at all.</returns>
    /// <exception cref="InputFaultException">Nothing was counted, or more than all.</exception>
    public static Estimate Of(int count, int of)
    {
        (double low, double high) = Limits(count, of, Estimate.NormalQuantile95);
        double p = count / (double)of;
        return Estimate.WithInterval(p, Math.Sqrt(p * (1 - p) / of), low, high, Origin.Calculated);
    }

    /// <summary>
    /// Ends of the score interval: the shares q with |p − q| ≤ z √(q(1 − q)/n), that is
    /// (p + z²/2n ± z √(p(1 − p)/n + z²/4n²))/(1 + z²/n).
    /// </summary>
    /// <param name="count">How many, 0 to all.</param>
    /// <param name="of">Of how many, at least one.</param>
    /// <param name="quantile">z, above 0: 1.645 for 90 %, 1.960 for 95 %.</param>
    /// <returns>Lower and upper end, between 0 and 1, the share between them.</returns>
    /// <exception cref="InputFaultException">Nothing was counted, more than all, or no quantile.</exception>
    public static (double Low, double High) Limits(int count, int of, double quantile)
    {
        Require.InRange(of, 1, int.MaxValue, nameof(of), "A share needs at least one that was counted.");
        Require.InRange(count, 0, of, nameof(count), string.Create(CultureInfo.InvariantCulture, $"No more than all {of} can be counted."));
        Require.InRange(quantile, 1e-6, 10, nameof(quantile), "Give the normal quantile, 1.645 for 90 %.");
        double p = count / (double)of;
        double z2 = quantile * quantile / of;
        double middle = (p + (z2 / 2)) / (1 + z2);
        double half = quantile / (1 + z2) * Math.Sqrt((p * (1 - p) / of) + (z2 / (4 * of)));
        return (Math.Max(0, Math.Min(p, middle - half)), Math.Min(1, Math.Max(p, middle + half)));
    }
}
