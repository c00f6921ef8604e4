namespace Cavaxis.Circulation.Signals;

/// <summary>Every signal over a stretch of time that need not repeat itself, at equal steps from time zero.</summary>
public sealed class Trace
{
    private readonly double[][] samples;

    internal Trace(double[][] samples, double spacingS, OxygenBudget oxygen) =>
        (this.samples, SpacingS, Oxygen) = (samples, spacingS, oxygen);

    /// <summary>Time between samples, s.</summary>
    public double SpacingS { get; }

    /// <summary>Number of samples; the first lies at time zero.</summary>
    public int Count => samples[0].Length;

    /// <summary>Oxygen over the stretch.</summary>
    public OxygenBudget Oxygen { get; }

    /// <summary>Samples of a signal, in the unit that <see cref="Signal"/> names.</summary>
    /// <param name="signal">The signal.</param>
    public ReadOnlySpan<double> this[Signal signal] => samples[(int)signal];

    /// <summary>Mean over the last seconds.</summary>
    /// <param name="signal">The signal.</param>
    /// <param name="seconds">Length of the stretch at the end; at least one sample is taken.</param>
    /// <returns>Mean.</returns>
    public double LastMean(Signal signal, double seconds)
    {
        int count = Math.Clamp((int)(seconds / SpacingS), 1, Count);
        double sum = 0;
        foreach (double value in this[signal][^count..])
        {
            sum += value;
        }

        return sum / count;
    }
}
