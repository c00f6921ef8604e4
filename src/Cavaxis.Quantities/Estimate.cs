namespace Cavaxis.Quantities;

/// <summary>
/// A number with its uncertainty and its origin. The interval holds nine tenths of the belief; it need not be
/// symmetric. The unit stands in the name of the field that holds the estimate (<c>depthCm</c>).
/// </summary>
public sealed record Estimate
{
    /// <summary>Standard normal quantile of the central 90 % interval: Φ⁻¹(0.95).</summary>
    public const double NormalQuantile95 = 1.6448536269514722;

    private Estimate(double value, double sd, double low, double high, Origin origin) =>
        (Value, Sd, Low, High, Origin) = (value, sd, low, high, origin);

    /// <summary>Best single value (mean, or median where the distribution is skewed).</summary>
    public double Value { get; }

    /// <summary>Standard deviation, same unit as the value; zero where the number is exact.</summary>
    public double Sd { get; }

    /// <summary>Lower end of the 90 % interval.</summary>
    public double Low { get; }

    /// <summary>Upper end of the 90 % interval.</summary>
    public double High { get; }

    /// <summary>Measured, calculated or estimated.</summary>
    public Origin Origin { get; }

    /// <summary>An estimate with a symmetric normal interval.</summary>
    /// <param name="value">Mean.</param>
    /// <param name="sd">Standard deviation, not negative.</param>
    /// <param name="origin">Where the number comes from.</param>
    /// <returns>The estimate with its 90 % interval.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value or the spread is not finite, or the spread is negative.</exception>
    public static Estimate Normal(double value, double sd, Origin origin) => WithInterval(
        value, sd, value - (NormalQuantile95 * sd), value + (NormalQuantile95 * sd), origin);

    /// <summary>An estimate with a given, possibly skewed interval.</summary>
    /// <param name="value">Best single value.</param>
    /// <param name="sd">Standard deviation, not negative.</param>
    /// <param name="low">Fifth percentile.</param>
    /// <param name="high">Ninety-fifth percentile.</param>
    /// <param name="origin">Where the number comes from.</param>
    /// <returns>The estimate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite, the spread is negative or the interval is turned round.</exception>
    public static Estimate WithInterval(double value, double sd, double low, double high, Origin origin)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "An estimate needs a finite value.");
        }

        if (!double.IsFinite(sd) || sd < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(sd), sd, "A standard deviation is finite and not negative.");
        }

        if (!double.IsFinite(low) || !double.IsFinite(high) || low > high)
        {
            throw new ArgumentOutOfRangeException(nameof(low), low, FormattableString.Invariant($"The interval must be finite and ordered; high is {high}."));
        }

        return new Estimate(value, sd, low, high, origin);
    }

    /// <summary>Mean, spread and 90 % interval of sampled values.</summary>
    /// <param name="samples">At least two finite samples, in any order; left as they are.</param>
    /// <param name="origin">Where the number comes from.</param>
    /// <returns>The estimate whose value is the median.</returns>
    /// <exception cref="ArgumentException">Fewer than two samples.</exception>
    public static Estimate FromSamples(ReadOnlySpan<double> samples, Origin origin)
    {
        if (samples.Length < 2)
        {
            throw new ArgumentException("At least two samples are needed.", nameof(samples));
        }

        double[] sorted = samples.ToArray();
        Array.Sort(sorted);
        return FromSorted(sorted, origin);
    }

    /// <summary>The same for values that are in order already.</summary>
    /// <param name="ascending">At least one finite value, ascending; a single one is taken as exact.</param>
    /// <param name="origin">Where the number comes from.</param>
    /// <returns>The estimate whose value is the median.</returns>
    /// <exception cref="ArgumentException">No value.</exception>
    public static Estimate FromSorted(ReadOnlySpan<double> ascending, Origin origin)
    {
        if (ascending.IsEmpty)
        {
            throw new ArgumentException("At least one value is needed.", nameof(ascending));
        }

        double mean = 0;
        foreach (double x in ascending)
        {
            mean += x;
        }

        mean /= ascending.Length;
        double squares = 0;
        foreach (double x in ascending)
        {
            squares += (x - mean) * (x - mean);
        }

        double sd = Math.Sqrt(squares / Math.Max(1, ascending.Length - 1));
        return WithInterval(Quantile(ascending, 0.5), sd, Quantile(ascending, 0.05), Quantile(ascending, 0.95), origin);
    }

    /// <summary>Linear-interpolation quantile (type 7 of Hyndman and Fan 1996) of sorted values.</summary>
    /// <param name="sorted">Ascending values, at least one.</param>
    /// <param name="probability">Between 0 and 1.</param>
    /// <returns>The quantile.</returns>
    public static double Quantile(ReadOnlySpan<double> sorted, double probability)
    {
        double position = probability * (sorted.Length - 1);
        int below = (int)Math.Floor(position);
        int above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + ((position - below) * (sorted[above] - sorted[below]));
    }
}
