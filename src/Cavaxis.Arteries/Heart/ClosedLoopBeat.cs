using System.Collections.Immutable;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;

namespace Cavaxis.Arteries.Heart;

/// <summary>One mean beat of the settled closed loop: what the tree takes from it.</summary>
public static class ClosedLoopBeat
{
    private const int Steps = 200;

    /// <summary>Filling and surroundings of the left ventricle over a mean beat of the breath.</summary>
    /// <param name="settled">The settled circulation.</param>
    /// <returns>The record.</returns>
    /// <exception cref="NotSettledException">It has not settled.</exception>
    public static FillingRecord Filling(SettledState settled)
    {
        ArgumentNullException.ThrowIfNull(settled);
        BreathRecord breath = settled.RequireBreath();
        CirculationParameters p = settled.Parameters;
        double period = breath.PeriodS / breath.Beats;
        VentricleNumbers numbers = new(p, period);
        ImmutableArray<double> volume = MeanBeat(breath, Signal.LeftVentricularVolume);

        // What the ventricle's own wall does not explain is around it: pleura, pericardium, septum.
        ReadOnlySpan<double> pressures = breath[Signal.LeftVentricularPressure];
        ReadOnlySpan<double> volumes = breath[Signal.LeftVentricularVolume];
        double[] around = new double[breath.Count];
        for (int i = 0; i < around.Length; i++)
        {
            around[i] = pressures[i] - numbers.Wall(numbers.Activation(i * breath.PeriodS / breath.Count), volumes[i]);
        }

        return new FillingRecord(period, MeanBeat(breath, Signal.LeftAtrialPressure), MeanBeat(around, breath.Beats), volume[0]);
    }

    /// <summary>A signal over a mean beat, at equal steps from its start, the end left out.</summary>
    /// <param name="breath">The breath.</param>
    /// <param name="signal">The signal.</param>
    /// <returns>Values.</returns>
    public static ImmutableArray<double> MeanBeat(BreathRecord breath, Signal signal)
    {
        ArgumentNullException.ThrowIfNull(breath);
        return MeanBeat(breath[signal], breath.Beats);
    }

    private static ImmutableArray<double> MeanBeat(ReadOnlySpan<double> samples, int beats)
    {
        double[] mean = new double[Steps];
        for (int beat = 0; beat < beats; beat++)
        {
            for (int i = 0; i < Steps; i++)
            {
                double at = (beat + ((double)i / Steps)) / beats * samples.Length;
                int below = (int)at;
                double share = at - below;
                mean[i] += ((1 - share) * samples[below % samples.Length]) + (share * samples[(below + 1) % samples.Length]);
            }
        }

        return [.. mean.Select(m => m / beats)];
    }
}
