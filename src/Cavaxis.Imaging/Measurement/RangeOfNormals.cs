namespace Cavaxis.Imaging.Measurement;

/// <summary>How far apart the largest and the smallest of equal readings lie by chance alone.</summary>
public static class RangeOfNormals
{
    /// <summary>
    /// Expected range of n standard normal numbers, ∫ (1 − Φⁿ − (1 − Φ)ⁿ) dx; quality control tables it as d₂.
    /// </summary>
    /// <param name="count">How many, 1 or more.</param>
    /// <returns>In standard deviations; 0 for one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one.</exception>
    public static double Expected(int count)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(count);
        const double Step = 0.01;
        const double Far = 9;

        // Trapezium on a smooth function that is zero at both ends: exact to rounding.
        double below = 0;
        double sum = 0;
        double density = Math.Exp(-Far * Far / 2);
        for (double x = -Far; x < Far; x += Step)
        {
            double next = Math.Exp(-(x + Step) * (x + Step) / 2);
            double middle = Math.Exp(-(x + (Step / 2)) * (x + (Step / 2)) / 2);
            below += Step / 6 * (density + (4 * middle) + next) / Math.Sqrt(2 * Math.PI);
            density = next;
            double p = Math.Min(1, below);
            sum += (1 - Math.Pow(p, count) - Math.Pow(1 - p, count)) * Step;
        }

        return sum;
    }
}
