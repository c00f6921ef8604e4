namespace Cavaxis.Arteries.Findings;

/// <summary>A quantity over one settled beat. Its unit stands in the name of the property that holds it.</summary>
/// <param name="Lowest">Lowest value of the beat.</param>
/// <param name="Mean">Mean: over time for a place; over the blood that enters for an organ.</param>
/// <param name="Highest">Highest value of the beat.</param>
public readonly record struct OverBeat(double Lowest, double Mean, double Highest)
{
    /// <summary>Extremes and mean of samples at equal steps.</summary>
    /// <param name="samples">At least one sample.</param>
    /// <returns>The summary.</returns>
    public static OverBeat Of(IReadOnlyCollection<double> samples) => new(samples.Min(), samples.Average(), samples.Max());

    /// <summary>The same with each number passed through a rising function.</summary>
    /// <param name="rising">The function.</param>
    /// <returns>The new summary; the mean is the function of the mean.</returns>
    public OverBeat Through(Func<double, double> rising)
    {
        ArgumentNullException.ThrowIfNull(rising);
        return new OverBeat(rising(Lowest), rising(Mean), rising(Highest));
    }
}
