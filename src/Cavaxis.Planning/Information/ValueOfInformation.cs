namespace Cavaxis.Planning.Information;

/// <summary>
/// Expected narrowing of an outcome by one more measurement, from the samples of the joint distribution alone. The
/// measurement is simulated in every sampled anatomy (true value plus its error); anatomies with like readings are put
/// into one bin; what spread remains inside the bins is what would remain after the measurement.
/// Expected posterior variance E[Var(f | y)] by the law of total variance; binning estimator as for single-parameter
/// partial perfect information (Strong and Oakley 2013, Med Decis Making 33:755, from memory), with measurement error.
/// </summary>
public static class ValueOfInformation
{
    private const int LargestBinCount = 40;
    private const int SmallestBin = 50;

    /// <summary>Fewest anatomies for which a reading can be valued.</summary>
    internal const int FewestAnatomies = 2 * SmallestBin;

    /// <summary>Variance of an outcome that is expected to remain after a reading.</summary>
    /// <param name="readings">Simulated reading in each anatomy; sorted by this method together with the outcomes, so hand in copies.</param>
    /// <param name="outcomes">Outcome in each anatomy, same order as the readings.</param>
    /// <returns>Variance now and expected variance afterwards; the latter is never above the former.</returns>
    /// <exception cref="ArgumentException">The lengths differ, or there are fewer than 100 anatomies.</exception>
    public static (double Now, double After) ExpectedVariance(double[] readings, double[] outcomes)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(outcomes);
        if (readings.Length != outcomes.Length || readings.Length < FewestAnatomies)
        {
            throw new ArgumentException($"Readings and outcomes must be of one length of at least {FewestAnatomies}.", nameof(readings));
        }

        double now = Variance(outcomes);
        Array.Sort(readings, outcomes);
        return (now, Math.Min(now, Remaining(outcomes)));
    }

    /// <summary>Variance of an outcome that is expected to remain after a reading, never above the variance now by more than the noise of the bins.</summary>
    /// <param name="outcomes">Outcome in each anatomy, in ascending order of the reading.</param>
    /// <returns>The mean variance inside the bins.</returns>
    internal static double Remaining(ReadOnlySpan<double> outcomes)
    {
        int count = outcomes.Length;
        int bins = Math.Clamp(count / SmallestBin, 2, LargestBinCount);
        double after = 0;
        for (int bin = 0; bin < bins; bin++)
        {
            int from = (int)((long)bin * count / bins);
            int to = (int)((long)(bin + 1) * count / bins);
            after += Variance(outcomes[from..to]) * (to - from) / count;
        }

        return after;
    }

    /// <summary>Unbiased variance.</summary>
    /// <param name="values">At least two values.</param>
    /// <returns>The variance.</returns>
    internal static double Variance(ReadOnlySpan<double> values)
    {
        double mean = 0;
        foreach (double value in values)
        {
            mean += value;
        }

        mean /= values.Length;
        double squares = 0;
        foreach (double value in values)
        {
            squares += (value - mean) * (value - mean);
        }

        // Dividing by n − 1 inside the bins takes away the optimism of having fitted each bin's own mean.
        return squares / (values.Length - 1);
    }
}
