using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Boundaries;

/// <summary>A wave that repeats, joined by straight lines between the points of a table.</summary>
public sealed class PeriodicWave
{
    private readonly double[] times;
    private readonly double[] values;

    /// <summary>A wave.</summary>
    /// <param name="times">Rising times, s: the first is the start, the last the end of one period.</param>
    /// <param name="values">Values at the times.</param>
    /// <exception cref="InputFaultException">Fewer than two points, lists of different length, or times that do not rise.</exception>
    public PeriodicWave(IReadOnlyList<double> times, IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(times);
        ArgumentNullException.ThrowIfNull(values);
        if (times.Count < 2 || times.Count != values.Count || !times.Zip(times.Skip(1)).All(static pair => pair.Second > pair.First))
        {
            throw new InputFaultException(new InputFault(
                FaultCode.TooFewPoints, "wave", "(a table)", "two or more points at rising times, one value each", "Sort the points by time."));
        }

        this.times = [.. times];
        this.values = [.. values];
        double area = 0;
        for (int i = 1; i < this.times.Length; i++)
        {
            area += 0.5 * (this.times[i] - this.times[i - 1]) * (this.values[i] + this.values[i - 1]);
        }

        Mean = area / Period;
    }

    /// <summary>Length of a period, s.</summary>
    public double Period => times[^1] - times[0];

    /// <summary>Mean over a period.</summary>
    public double Mean { get; }

    /// <summary>Value at a time.</summary>
    /// <param name="time">Time, s.</param>
    /// <returns>The value.</returns>
    public double At(double time)
    {
        double phase = (time - times[0]) % Period;
        double at = times[0] + (phase < 0 ? phase + Period : phase);
        int above = Array.BinarySearch(times, at);
        if (above >= 0)
        {
            return values[above];
        }

        above = Math.Clamp(~above, 1, times.Length - 1);
        double share = (at - times[above - 1]) / (times[above] - times[above - 1]);
        return values[above - 1] + (share * (values[above] - values[above - 1]));
    }
}
