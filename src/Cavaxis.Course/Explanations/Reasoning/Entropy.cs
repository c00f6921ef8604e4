namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>How undecided a set of probabilities is.</summary>
internal static class Entropy
{
    /// <summary>Shannon's entropy, −Σ p log₂ p, bits.</summary>
    public static double Bits(IReadOnlyList<double> probabilities)
    {
        double sum = 0;
        foreach (double p in probabilities)
        {
            sum -= p > 0 ? p * Math.Log2(p) : 0;
        }

        return sum;
    }
}
