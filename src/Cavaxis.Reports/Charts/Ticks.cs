using System.Globalization;

namespace Cavaxis.Reports.Charts;

/// <summary>
/// Tick values a person can read: multiples of 1, 2 or 5 times a power of ten (Heckbert, "Nice numbers for graph labels",
/// Graphics Gems, 1990, from memory), or decades on a logarithmic axis.
/// </summary>
public sealed record Ticks
{
    private const double Slack = 1e-9;

    private Ticks(double low, double high, IReadOnlyList<double> values, int decimals) =>
        (Low, High, Values, Decimals) = (low, high, values, decimals);

    /// <summary>Lower end of the axis.</summary>
    public double Low { get; }

    /// <summary>Upper end of the axis.</summary>
    public double High { get; }

    /// <summary>Ascending tick values, the ends included.</summary>
    public IReadOnlyList<double> Values { get; }

    /// <summary>Decimals that tell all ticks apart; −1 where every tick shows as many as it needs.</summary>
    public int Decimals { get; }

    /// <summary>Ticks of a linear axis that cover a range.</summary>
    /// <param name="low">Lowest value shown.</param>
    /// <param name="high">Highest value shown; may equal the lowest.</param>
    /// <param name="wanted">About how many ticks, two or more.</param>
    /// <returns>The ticks.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The range is not finite or turned round, or fewer than two ticks are wanted.</exception>
    public static Ticks Linear(double low, double high, int wanted = 6)
    {
        CheckRange(low, high);
        ArgumentOutOfRangeException.ThrowIfLessThan(wanted, 2);
        if (high - low < Math.Max(Math.Abs(low), Math.Abs(high)) * Slack || high == low)
        {
            double pad = high == 0 ? 0.5 : Math.Abs(high) * 0.1;
            (low, high) = (low - pad, high + pad);
        }

        double step = NiceStep((high - low) / (wanted - 1));
        double first = Math.Floor((low / step) + Slack);
        double last = Math.Ceiling((high / step) - Slack);
        int decimals = Math.Clamp((int)-Math.Floor(Math.Log10(step) + Slack), 0, 12);
        var values = new List<double>();
        for (double k = first; k <= last; k++)
        {
            // Counting in whole steps keeps 0.30000000000000004 out.
            values.Add(Math.Round(k * step, decimals));
        }

        return new Ticks(values[0], values[^1], values, decimals);
    }

    /// <summary>Ticks of a logarithmic axis: 1, 2, 5 in every decade over short ranges, else the decades.</summary>
    /// <param name="low">Lowest value shown, above zero.</param>
    /// <param name="high">Highest value shown.</param>
    /// <returns>The ticks.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The range is not finite, turned round, or not above zero.</exception>
    public static Ticks Logarithmic(double low, double high)
    {
        CheckRange(low, high);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(low);
        bool few = Math.Log10(high / low) > 3;
        double[] mantissas = few ? [1] : [1, 2, 5];
        var candidates = new List<double>();
        for (int decade = (int)Math.Floor(Math.Log10(low)) - 1; decade <= (int)Math.Ceiling(Math.Log10(high)) + 1; decade++)
        {
            candidates.AddRange(mantissas.Select(m =>
                decade < 0 ? m / Math.Pow(10, -decade) : m * Math.Pow(10, decade)));
        }

        int from = candidates.FindLastIndex(c => c <= low * (1 + Slack));
        int to = candidates.FindIndex(c => c >= high * (1 - Slack));
        to = Math.Max(to, from + 1);
        List<double> values = candidates[from..(to + 1)];
        return new Ticks(values[0], values[^1], values, -1);
    }

    /// <summary>A tick value as printed.</summary>
    /// <param name="value">The value.</param>
    /// <returns>Its digits.</returns>
    public string Label(double value) => Decimals < 0
        ? value.ToString("0.############", CultureInfo.InvariantCulture)
        : value.ToString("F" + Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static double NiceStep(double rough)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double mantissa = rough / power;
        return power * (mantissa <= 1 + Slack ? 1 : mantissa <= 2 + Slack ? 2 : mantissa <= 5 + Slack ? 5 : 10);
    }

    private static void CheckRange(double low, double high)
    {
        if (!double.IsFinite(low) || !double.IsFinite(high) || low > high)
        {
            throw new ArgumentOutOfRangeException(nameof(low), low, FormattableString.Invariant($"An axis needs a finite ascending range; high is {high}."));
        }
    }
}
