using Cavaxis.Circulation.Signals;
using Cavaxis.Planning.Json;

namespace Cavaxis.Planning.Running;

/// <summary>Signals over time.</summary>
/// <param name="SpacingS">Time between samples; the first lies at time zero.</param>
/// <param name="Count">Number of samples.</param>
/// <param name="LengthS">Length of the record.</param>
/// <param name="RepeatsItself">True for a settled breath: what follows the last sample is the first.</param>
/// <param name="Signals">The signals.</param>
public sealed record WaveformSet(double SpacingS, int Count, double LengthS, bool RepeatsItself, IReadOnlyList<Waveform> Signals)
{
    /// <summary>A settled breath.</summary>
    /// <param name="breath">The breath.</param>
    /// <returns>Every signal.</returns>
    public static WaveformSet Of(BreathRecord breath)
    {
        ArgumentNullException.ThrowIfNull(breath);
        return new WaveformSet(
            breath.PeriodS / breath.Count, breath.Count, breath.PeriodS, true,
            [.. Enum.GetValues<Signal>().Select(s => new Waveform(JsonName.Of(s.ToString()), SignalUnits.Of(s), Rounded(breath[s])))]);
    }

    /// <summary>A run over time.</summary>
    /// <param name="trace">The run.</param>
    /// <returns>Every signal.</returns>
    public static WaveformSet Of(Trace trace)
    {
        ArgumentNullException.ThrowIfNull(trace);
        return new WaveformSet(
            trace.SpacingS, trace.Count, trace.SpacingS * (trace.Count - 1), false,
            [.. Enum.GetValues<Signal>().Select(s => new Waveform(JsonName.Of(s.ToString()), SignalUnits.Of(s), Rounded(trace[s])))]);
    }

    /// <summary>Six digits: more than any monitor shows, and half the length.</summary>
    internal static double[] Rounded(ReadOnlySpan<double> values)
    {
        double[] rounded = new double[values.Length];
        for (int i = 0; i < rounded.Length; i++)
        {
            double size = Math.Abs(values[i]);
            int digits = size < 1e-9 ? 9 : Math.Clamp(5 - (int)Math.Floor(Math.Log10(size)), 0, 12);
            double kept = Math.Round(values[i], digits);
            rounded[i] = kept == 0 ? 0 : kept;
        }

        return rounded;
    }
}
