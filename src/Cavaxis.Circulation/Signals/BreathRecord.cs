namespace Cavaxis.Circulation.Signals;

/// <summary>Every signal over one settled breath, at equal steps of time from its start; the end, which equals the start, is left out.</summary>
public sealed class BreathRecord
{
    private readonly double[][] samples;

    internal BreathRecord(double[][] samples, double periodS, int beats) => (this.samples, PeriodS, Beats) = (samples, periodS, beats);

    /// <summary>Length of the record, s.</summary>
    public double PeriodS { get; }

    /// <summary>Beats in the record.</summary>
    public int Beats { get; }

    /// <summary>Number of samples.</summary>
    public int Count => samples[0].Length;

    /// <summary>Samples of a signal, in the unit that <see cref="Signal"/> names.</summary>
    /// <param name="signal">The signal.</param>
    public ReadOnlySpan<double> this[Signal signal] => samples[(int)signal];

    /// <summary>Mean over the record: for a repeating signal the mean of equally spaced samples.</summary>
    /// <param name="signal">The signal.</param>
    /// <returns>Mean.</returns>
    public double Mean(Signal signal)
    {
        double sum = 0;
        foreach (double value in samples[(int)signal])
        {
            sum += value;
        }

        return sum / Count;
    }

    /// <summary>Lowest sample.</summary>
    /// <param name="signal">The signal.</param>
    /// <returns>Lowest value.</returns>
    public double Lowest(Signal signal) => samples[(int)signal].Min();

    /// <summary>Highest sample.</summary>
    /// <param name="signal">The signal.</param>
    /// <returns>Highest value.</returns>
    public double Highest(Signal signal) => samples[(int)signal].Max();

    /// <summary>Mean over the beats of the highest or lowest sample of each beat, as a monitor shows systolic and diastolic pressure.</summary>
    /// <param name="signal">The signal.</param>
    /// <param name="highest">True for the highest.</param>
    /// <returns>Mean of the extremes.</returns>
    public double BeatExtreme(Signal signal, bool highest)
    {
        double[] values = samples[(int)signal];
        double sum = 0;
        for (int beat = 0; beat < Beats; beat++)
        {
            int from = beat * values.Length / Beats;
            int to = (beat + 1) * values.Length / Beats;
            double extreme = values[from];
            for (int i = from; i < to; i++)
            {
                extreme = highest ? Math.Max(extreme, values[i]) : Math.Min(extreme, values[i]);
            }

            sum += extreme;
        }

        return sum / Beats;
    }
}
