using Cavaxis.Quantities;

namespace Cavaxis.Planning.Insertion;

/// <summary>A share of sampled anatomies with Wilson's interval (1927), which is sound at 0 and at all.</summary>
internal static class WilsonShare
{
    private const double Z = 1.6448536269514722;

    /// <summary>The share, calculated, with its 90 % interval from the number of anatomies alone.</summary>
    /// <param name="count">How many.</param>
    /// <param name="of">Of how many, at least one.</param>
    public static Estimate Of(int count, int of)
    {
        double p = count / (double)of;
        double z2 = Z * Z / of;
        double middle = (p + (z2 / 2)) / (1 + z2);
        double half = Z / (1 + z2) * Math.Sqrt((p * (1 - p) / of) + (z2 / (4 * of)));
        return Estimate.WithInterval(p, Math.Sqrt(p * (1 - p) / of), Math.Max(0, Math.Min(p, middle - half)), Math.Min(1, Math.Max(p, middle + half)), Origin.Calculated);
    }
}
