using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Doppler;

/// <summary>
/// Finds whole beats: a beat begins at the foot before the speed rises through the middle between its low and its high (5th and 95th of a hundred), after it was below a quarter of the
/// way; two rises lie at least 0.24 s apart (250 a minute).
/// </summary>
public static class BeatFinder
{
    /// <summary>Shortest time from one beat to the next, s.</summary>
    public const double ShortestS = 0.24;

    /// <summary>Whole beats from the left to the right.</summary>
    /// <param name="envelope">The envelope.</param>
    /// <returns>None where fewer than two rises are seen: then the beat is given by hand.</returns>
    public static ImmutableArray<BeatWindow> Find(DopplerEnvelope envelope)
    {
        ArgumentNullException.ThrowIfNull(envelope);
        ImmutableArray<double> speeds = envelope.SpeedsCmPerS;
        double[] sorted = [.. speeds.Order()];
        double low = sorted[(int)(0.05 * (sorted.Length - 1))];
        double high = sorted[(int)Math.Ceiling(0.95 * (sorted.Length - 1))];
        double least = Math.Max(2 * envelope.Axes.CmPerSPerRow, 0.1 * high);
        if (high - low < least)
        {
            return [];
        }

        double middle = low + (0.5 * (high - low));
        double quarter = low + (0.25 * (high - low));
        double foot = low + (0.1 * (high - low));
        List<double> begins = [];
        bool armed = false;
        double lastRise = double.NegativeInfinity;
        for (int i = 1; i < speeds.Length; i++)
        {
            armed |= speeds[i - 1] <= quarter;
            if (armed && speeds[i - 1] < middle && speeds[i] >= middle)
            {
                double rise = i - 1 + ((middle - speeds[i - 1]) / (speeds[i] - speeds[i - 1]));
                if ((rise - lastRise) * envelope.Axes.SecondsPerColumn >= ShortestS)
                {
                    begins.Add(FootBefore(speeds, i - 1, foot));
                    lastRise = rise;
                }

                armed = false;
            }
        }

        return [.. begins.Zip(begins.Skip(1), static (from, to) => new BeatWindow(from, to))];
    }

    /// <summary>A beat given by hand.</summary>
    /// <param name="envelope">The envelope.</param>
    /// <param name="fromColumn">Its begin, column of the image.</param>
    /// <param name="toColumn">Its end, column of the image.</param>
    /// <returns>The beat.</returns>
    /// <exception cref="InputFaultException">The columns are not in the spectrum, or turned round.</exception>
    public static BeatWindow ByHand(DopplerEnvelope envelope, double fromColumn, double toColumn)
    {
        ArgumentNullException.ThrowIfNull(envelope);
        SpectralAxes axes = envelope.Axes;
        _ = Require.InRange(fromColumn, axes.Left, axes.Right, "beat.from", "Give a column inside the spectrum.");
        _ = Require.InRange(toColumn, axes.Left, axes.Right, "beat.to", "Give a column inside the spectrum.");
        return toColumn - fromColumn >= 2
            ? new BeatWindow(fromColumn - axes.Left, toColumn - axes.Left)
            : throw new InputFaultException(new InputFault(
                FaultCode.Contradiction, "beat", string.Create(CultureInfo.InvariantCulture, $"{fromColumn:0.#} to {toColumn:0.#}"), "an end two columns or more after the begin", "Give begin and end of one beat, from left to right."));
    }

    // Back down the slope to the foot, or to where it stops falling.
    private static double FootBefore(ImmutableArray<double> speeds, int from, double foot)
    {
        int i = from;
        while (i > 0 && speeds[i] > foot && Mean(speeds, i - 2) < Mean(speeds, i))
        {
            i--;
        }

        // Between two columns where the line passes the foot.
        return i < from && speeds[i] <= foot && speeds[i + 1] > foot ? i + ((foot - speeds[i]) / (speeds[i + 1] - speeds[i])) : i;
    }

    private static double Mean(ImmutableArray<double> speeds, int i) =>
        (speeds[Math.Max(0, i - 1)] + speeds[Math.Max(0, i)] + speeds[Math.Min(speeds.Length - 1, Math.Max(0, i + 1))]) / 3;
}
