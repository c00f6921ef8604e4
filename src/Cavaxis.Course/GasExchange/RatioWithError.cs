using Cavaxis.Quantities;

namespace Cavaxis.Course.GasExchange;

/// <summary>
/// A ratio of two numbers with error, by Fieller's theorem (1954): the ratios r for which numerator − r·denominator is not refuted. It keeps
/// its coverage where the usual error propagation fails, and says itself when it cannot answer: g = (z·sd/denominator)² at 1 or above means
/// that the denominator may be nought and no finite interval holds the truth.
/// </summary>
/// <param name="Value">Numerator over denominator.</param>
/// <param name="Sd">Standard deviation to first order.</param>
/// <param name="G">Fieller's g; below 1 for a finite interval.</param>
/// <param name="Low">Lower end of the 90 % interval; minus infinity when there is none.</param>
/// <param name="High">Upper end; infinity when there is none.</param>
internal readonly record struct RatioWithError(double Value, double Sd, double G, double Low, double High)
{
    /// <summary>The ratio.</summary>
    /// <param name="numerator">Numerator.</param>
    /// <param name="denominator">Denominator, positive.</param>
    /// <param name="numeratorVariance">Its variance.</param>
    /// <param name="denominatorVariance">Its variance.</param>
    /// <param name="covariance">Their covariance.</param>
    public static RatioWithError Of(double numerator, double denominator, double numeratorVariance, double denominatorVariance, double covariance)
    {
        const double Z2 = Estimate.NormalQuantile95 * Estimate.NormalQuantile95;
        double r = numerator / denominator;
        double g = denominator > 0 ? Z2 * denominatorVariance / (denominator * denominator) : double.PositiveInfinity;
        double variance = numeratorVariance - (2 * r * covariance) + (r * r * denominatorVariance);
        double sd = Math.Sqrt(Math.Max(0, variance)) / Math.Abs(denominator);
        if (!(g < 1))
        {
            return new RatioWithError(r, sd, g, double.NegativeInfinity, double.PositiveInfinity);
        }

        // Roots of (d² − z²V_d) r² − 2 (n d − z²C) r + (n² − z²V_n).
        double a = (denominator * denominator) - (Z2 * denominatorVariance);
        double b = (numerator * denominator) - (Z2 * covariance);
        double c = (numerator * numerator) - (Z2 * numeratorVariance);
        double root = Math.Sqrt(Math.Max(0, (b * b) - (a * c)));
        return new RatioWithError(r, sd, g, Math.Min(r, (b - root) / a), Math.Max(r, (b + root) / a));
    }
}
