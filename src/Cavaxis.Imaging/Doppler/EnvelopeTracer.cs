using System.Globalization;
using Cavaxis.Imaging.Frames;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Doppler;

/// <summary>
/// Traces the envelope of a spectrum. Brightness is the median of three columns, averaged over three rows. Noise (median, and 1.4826 times the median distance from it) is taken from the
/// outermost rows of the side, where the spectrum reaches in fewer than half of the columns. Each column is searched from outside in, so that neither the dark window
/// between baseline and modal band nor the brightness of that band matters: the envelope begins where the brightness stays above noise + 5 spreads (and 8 grey steps) for four rows,
/// and lies where it passes half way between noise and what it
/// reaches just inside, or what it reaches there in half of the columns where that is more. Columns far off the median of their neighbours are replaced by it.
/// </summary>
public static class EnvelopeTracer
{
    private const double OuterShare = 0.15;
    private const double Spreads = 5;
    private const double LeastContrast = 8;
    private const int RowsThatStay = 4;
    private const int NeighbourReach = 3;
    private const double RowsNearBaseline = 2;

    /// <summary>Traces.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="axes">Where the spectrum is.</param>
    /// <param name="side">Which side to trace.</param>
    /// <returns>The envelope.</returns>
    /// <exception cref="InputFaultException">The spectrum does not lie on the frame, is too small, or nothing stands out from the noise.</exception>
    public static DopplerEnvelope Trace(ImageFrame frame, SpectralAxes axes, FlowSide side = FlowSide.Stronger)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(axes);
        if (axes.Right >= frame.Width || axes.Bottom >= frame.Height || axes.Left < 0 || axes.Top < 0)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.Contradiction, "region", axes.Words, string.Create(CultureInfo.InvariantCulture, $"a region on a frame of {frame.Width} by {frame.Height}"), "Give the frame that the region was judged for."));
        }

        _ = Require.InRange(axes.Columns, 5, 16_384, "spectrum.columns", "The spectrum is too narrow to trace.");
        double[][] above = Side(frame, axes, FlowSide.Above);
        double[][] below = Side(frame, axes, FlowSide.Below);
        FlowSide traced = side != FlowSide.Stronger ? side : Strength(above) >= Strength(below) ? FlowSide.Above : FlowSide.Below;
        double[][] rows = traced == FlowSide.Above ? above : below;
        _ = Require.InRange(rows.Length, 10, 16_384, "spectrum.rows", "That side of the baseline has too few rows to trace.");

        (double noise, double spread) = Noise(rows);
        double onset = noise + Math.Max(LeastContrast, Spreads * spread);
        int[] begin = [.. Enumerable.Range(0, axes.Columns).Select(column => OnsetOf(rows, column, onset))];
        double[] inside = [.. Enumerable.Range(0, begin.Length).Where(column => begin[column] > 0).Select(column => Inside(rows, column, begin[column])).Order()];
        if (inside.Length == 0)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.NotFound, "spectrum", string.Create(CultureInfo.InvariantCulture, $"noise {noise:F0}, spread {spread:F1} grey steps"), "a spectrum that stands out from the noise", "Draw the envelope by hand, or choose the other side."));
        }

        double[] edge = [.. begin.Select((from, column) => from > 0 ? HalfWay(rows, column, from, noise, inside[inside.Length / 2]) : 0)];
        bool reaches = edge.Any(e => e > rows.Length - 2);
        double offset = FirstRowOffset(axes, traced);
        double[] steady = WithoutOutliers(edge);
        return new DopplerEnvelope(
            axes, traced,
            [.. steady.Select(e => e > 0 ? (e + offset) * axes.CmPerSPerRow : 0)],
            [.. steady.Select(static e => e > 0 ? EnvelopePart.Traced : EnvelopePart.NoSignal)], [], reaches);
    }

    /// <summary>An envelope without flow, to be drawn by a person.</summary>
    /// <param name="axes">Where the spectrum is.</param>
    /// <param name="side">Above or below the baseline.</param>
    /// <returns>The envelope.</returns>
    /// <exception cref="InputFaultException">No side is named.</exception>
    public static DopplerEnvelope Blank(SpectralAxes axes, FlowSide side)
    {
        ArgumentNullException.ThrowIfNull(axes);
        return side == FlowSide.Stronger
            ? throw new InputFaultException(new InputFault(FaultCode.NotAChoice, "side", "stronger", "above or below", "Say on which side of the baseline the envelope is drawn."))
            : new DopplerEnvelope(axes, side, [.. new double[axes.Columns]], [.. Enumerable.Repeat(EnvelopePart.NoSignal, axes.Columns)], [], false);
    }

    // Rows from the first beyond the baseline outwards; each the median of three columns, then the mean of three rows of the same side. A mean over
    // columns would let the modal band of a steeper neighbour lift the edge.
    private static double[][] Side(ImageFrame frame, SpectralAxes axes, FlowSide side)
    {
        int way = side == FlowSide.Above ? -1 : 1;
        int first = FirstRow(axes, side);
        int last = side == FlowSide.Above ? axes.Top : axes.Bottom;
        int count = Math.Max(0, (way * (last - first)) + 1);
        double[][] raw = new double[count][];
        for (int k = 0; k < count; k++)
        {
            raw[k] = new double[axes.Columns];
            for (int column = 0; column < axes.Columns; column++)
            {
                int row = first + (way * k);
                double a = frame.Brightness(axes.Left + Math.Max(0, column - 1), row);
                double b = frame.Brightness(axes.Left + column, row);
                double c = frame.Brightness(axes.Left + Math.Min(axes.Columns - 1, column + 1), row);
                raw[k][column] = Math.Max(Math.Min(a, b), Math.Min(Math.Max(a, b), c));
            }
        }

        double[][] smooth = new double[count][];
        for (int k = 0; k < count; k++)
        {
            double[] one = raw[Math.Max(0, k - 1)];
            double[] two = raw[k];
            double[] three = raw[Math.Min(count - 1, k + 1)];
            smooth[k] = [.. two.Select((middle, c) => (one[c] + middle + three[c]) / 3)];
        }

        return smooth;
    }

    private static int FirstRow(SpectralAxes axes, FlowSide side) => side == FlowSide.Above ? (int)Math.Ceiling(axes.BaselineRow) - 1 : (int)Math.Floor(axes.BaselineRow) + 1;

    // Rows from the baseline to the first row of the side.
    private static double FirstRowOffset(SpectralAxes axes, FlowSide side) => Math.Abs(FirstRow(axes, side) - axes.BaselineRow);

    private static double Strength(double[][] rows)
    {
        if (rows.Length < 4)
        {
            return 0;
        }

        double noise = Noise(rows).Level;
        return rows.Sum(row => row.Sum(value => Math.Max(0, value - noise - LeastContrast)));
    }

    private static (double Level, double Spread) Noise(double[][] rows)
    {
        int outer = Math.Max(2, (int)(OuterShare * rows.Length));
        double[] values = [.. rows.TakeLast(outer).SelectMany(static row => row)];
        Array.Sort(values);
        double level = values[values.Length / 2];
        double[] distances = [.. values.Select(v => Math.Abs(v - level))];
        Array.Sort(distances);
        return (level, 1.4826 * distances[distances.Length / 2]);
    }

    // Rows from the first row of the side to where the signal begins, seen from outside; zero where there is none.
    private static int OnsetOf(double[][] rows, int column, double onset)
    {
        for (int k = rows.Length - 1; k > RowsNearBaseline; k--)
        {
            int stays = 0;
            while (stays < RowsThatStay && k - stays >= 0 && rows[k - stays][column] >= onset)
            {
                stays++;
            }

            if (stays == RowsThatStay)
            {
                return k;
            }
        }

        return 0;
    }

    // What the brightness reaches just inside, past the blur of three rows.
    private static double Inside(double[][] rows, int column, int begin)
    {
        double[] inside = [.. Enumerable.Range(2, 4).Select(step => rows[Math.Max(0, begin - step)][column])];
        Array.Sort(inside);
        return (inside[1] + inside[2]) / 2;
    }

    // Where the edge fades slowly it has not risen yet just inside: then what other columns reach counts.
    private static double HalfWay(double[][] rows, int column, int begin, double noise, double usualInside)
    {
        double reached = rows.Take(begin + 1).Max(row => row[column]);
        double level = (noise + Math.Min(reached, Math.Max(usualInside, Inside(rows, column, begin)))) / 2;
        int k = Math.Min(rows.Length - 1, begin + 2);
        while (k > 0 && rows[k][column] < level)
        {
            k--;
        }

        if (k == rows.Length - 1)
        {
            return k;
        }

        double here = rows[k][column];
        double beyond = rows[k + 1][column];
        return k + (here > beyond && here >= level ? Math.Clamp((here - level) / (here - beyond), 0, 1) : 0);
    }

    private static double[] WithoutOutliers(double[] edge)
    {
        double[] steady = new double[edge.Length];
        for (int i = 0; i < edge.Length; i++)
        {
            double[] near = edge[Math.Max(0, i - NeighbourReach)..Math.Min(edge.Length, i + NeighbourReach + 1)];
            Array.Sort(near);
            double median = near[near.Length / 2];
            double spread = near[^2] - near[1];

            // What the neighbours' own slope explains is no outlier.
            steady[i] = Math.Abs(edge[i] - median) > Math.Max(3, spread) ? median : edge[i];
        }

        return steady;
    }
}
