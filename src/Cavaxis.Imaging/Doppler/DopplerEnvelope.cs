using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Doppler;

/// <summary>The fastest speed over time on one side of a spectrum, column by column, with where each comes from.</summary>
public sealed class DopplerEnvelope
{
    internal DopplerEnvelope(SpectralAxes axes, FlowSide side, ImmutableArray<double> speeds, ImmutableArray<EnvelopePart> parts, ImmutableArray<PixelPoint> corrections, bool reachesEdge)
    {
        (Axes, Side, SpeedsCmPerS, Parts) = (axes, side, speeds, parts);
        (Corrections, ReachesEdge) = (corrections, reachesEdge);
    }

    /// <summary>Time and speed on the image.</summary>
    public SpectralAxes Axes { get; }

    /// <summary>Above or below the baseline.</summary>
    public FlowSide Side { get; }

    /// <summary>Speed of each column from the left of the region, cm/s, not negative.</summary>
    public ImmutableArray<double> SpeedsCmPerS { get; }

    /// <summary>Where each column comes from.</summary>
    public ImmutableArray<EnvelopePart> Parts { get; }

    /// <summary>The points that a person placed.</summary>
    public ImmutableArray<PixelPoint> Corrections { get; }

    /// <summary>True where the trace touches the edge of the region: the spectrum is cut there or wraps to the other side.</summary>
    public bool ReachesEdge { get; }

    /// <summary>Share of the columns that a person drew.</summary>
    public double CorrectedShare => Parts.Count(static p => p == EnvelopePart.Corrected) / (double)Parts.Length;

    /// <summary>The envelope as points of the image, one for each column.</summary>
    /// <returns>Points, from the left.</returns>
    public ImmutableArray<PixelPoint> OnImage()
    {
        double way = Side == FlowSide.Above ? -1 : 1;
        return [.. SpeedsCmPerS.Select((speed, i) => new PixelPoint(Axes.Left + i, Axes.BaselineRow + (way * speed / Axes.CmPerSPerRow)))];
    }

    /// <summary>The same envelope with a part drawn by a person: straight lines through the points replace all columns from the first to the last.</summary>
    /// <param name="points">Two points or more on the image, from left to right, on the side of the flow or on the baseline.</param>
    /// <returns>Another envelope; the part is marked.</returns>
    /// <exception cref="InputFaultException">Points outside the spectrum, on the other side, or not from left to right.</exception>
    public DopplerEnvelope Correct(IReadOnlyList<PixelPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count < 2)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.TooFewPoints, "points", points.Count.ToString(CultureInfo.InvariantCulture), "two points or more", "Draw the part of the envelope that is to be replaced."));
        }

        double way = Side == FlowSide.Above ? -1 : 1;
        for (int i = 0; i < points.Count; i++)
        {
            PixelPoint p = points[i];
            bool inside = p.X >= Axes.Left - 0.5 && p.X <= Axes.Right + 0.5 && p.Y >= Axes.Top - 0.5 && p.Y <= Axes.Bottom + 0.5 && way * (p.Y - Axes.BaselineRow) >= -0.5;
            if (!inside || (i > 0 && p.X <= points[i - 1].X))
            {
                string side = Side == FlowSide.Above ? "above" : "below";
                throw new InputFaultException(new InputFault(
                    inside ? FaultCode.Contradiction : FaultCode.OutOfRange, "points", p.ToString(),
                    string.Create(CultureInfo.InvariantCulture, $"points from left to right, columns {Axes.Left} to {Axes.Right}, {side} the baseline at row {Axes.BaselineRow:0.#}"), "Place the points on the envelope, from left to right."));
            }
        }

        ImmutableArray<double>.Builder speeds = SpeedsCmPerS.ToBuilder();
        ImmutableArray<EnvelopePart>.Builder parts = Parts.ToBuilder();
        int piece = 0;
        for (int column = (int)Math.Ceiling(points[0].X - Axes.Left); column <= points[^1].X - Axes.Left && column < speeds.Count; column++)
        {
            double x = Axes.Left + column;
            while (piece < points.Count - 2 && points[piece + 1].X < x)
            {
                piece++;
            }

            (PixelPoint a, PixelPoint b) = (points[piece], points[piece + 1]);
            double row = a.Y + ((b.Y - a.Y) * (x - a.X) / (b.X - a.X));
            if (column >= 0)
            {
                speeds[column] = Math.Max(0, way * (row - Axes.BaselineRow)) * Axes.CmPerSPerRow;
                parts[column] = EnvelopePart.Corrected;
            }
        }

        return new DopplerEnvelope(Axes, Side, speeds.ToImmutable(), parts.ToImmutable(), Corrections.AddRange(points), ReachesEdge);
    }

    /// <summary>Speed at a place between columns.</summary>
    /// <param name="column">Columns from the left of the region.</param>
    /// <returns>cm/s, along the straight line between columns; that of the end beyond it.</returns>
    public double SpeedAt(double column)
    {
        double inside = Math.Clamp(column, 0, SpeedsCmPerS.Length - 1);
        int i = Math.Min((int)inside, Math.Max(0, SpeedsCmPerS.Length - 2));
        return SpeedsCmPerS.Length == 1 ? SpeedsCmPerS[0] : SpeedsCmPerS[i] + ((inside - i) * (SpeedsCmPerS[i + 1] - SpeedsCmPerS[i]));
    }

    /// <summary>Integral of the speed over time between two places, exact for straight lines between columns.</summary>
    /// <param name="from">Columns from the left of the region.</param>
    /// <param name="to">Not before <paramref name="from"/>.</param>
    /// <returns>cm.</returns>
    public double IntegralCm(double from, double to)
    {
        double sum = 0;
        double at = from;
        while (at < to)
        {
            double next = Math.Min(to, Math.Floor(at) + 1);
            sum += (next - at) * (SpeedAt(at) + SpeedAt(next)) / 2;
            at = next;
        }

        return sum * Axes.SecondsPerColumn;
    }
}
