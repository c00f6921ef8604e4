using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>Paints one margin of the axis: bands in lanes that do not overlap, and labels that do not overlap.</summary>
internal sealed class MarginPainter
{
    private const double NamePt = 7.2;
    private const double WordsPt = 6.8;
    private const double LineMm = 2.95;
    private const double GapMm = 1.6;
    private const double WidestLane = 3.4;

    private readonly AxisFrame frame;
    private readonly bool onLeft;
    private readonly double labelsFrom;
    private readonly double labelsTo;
    private readonly double lanesFrom;
    private readonly double lanesTo;

    internal MarginPainter(AxisFrame frame, bool onLeft)
    {
        (this.frame, this.onLeft) = (frame, onLeft);
        (labelsFrom, labelsTo) = onLeft ? (0, AxisFrame.LeftLabels) : (AxisFrame.RightLabels, AxisFrame.PaperWidth);
        (lanesFrom, lanesTo) = onLeft ? (AxisFrame.LeftLanes, AxisFrame.BodyLeft - 1) : (AxisFrame.RightLanes, AxisFrame.RightLabels - 5);
    }

    /// <summary>Room that the labels need from top to bottom, mm.</summary>
    internal double Need(IReadOnlyList<MarginEntry> entries) => entries.Sum(e => (Wrapped(e).Count * LineMm) + GapMm);

    /// <summary>Paints the margin.</summary>
    /// <param name="entries">Labels, in any order.</param>
    /// <param name="bottom">How far down labels may reach, mm.</param>
    internal IEnumerable<DrawingItem> Paint(IReadOnlyList<MarginEntry> entries, double bottom)
    {
        MarginEntry[] ordered = [.. entries.OrderBy(e => e.Position.Median).ThenBy(e => e.Lines[0], StringComparer.Ordinal)];
        int[] lanes = Lanes(ordered);
        double width = Math.Min(WidestLane, (lanesTo - lanesFrom) / Math.Max(1, lanes.DefaultIfEmpty(0).Max() + 1));
        List<(string Words, bool Bold)>[] lines = [.. ordered.Select(Wrapped)];
        double[] middles = LabelStack.Place(
            [.. ordered.Select(e => frame.ClampedY(e.Position.Median))], [.. lines.Select(l => (l.Count * LineMm) + GapMm)], AxisFrame.Top - 2, bottom);
        for (int i = 0; i < ordered.Length; i++)
        {
            MarginEntry entry = ordered[i];
            bool inView = frame.Y(entry.Position.Median) >= AxisFrame.Top && frame.Y(entry.Position.Median) <= frame.Bottom;
            double y = inView ? frame.ClampedY(entry.Position.Median) : entry.At.Y;
            double lane = onLeft ? lanesTo - (width * (lanes[i] + 0.5)) : lanesFrom + (width * (lanes[i] + 0.5));
            double inner = onLeft ? labelsTo : labelsFrom;
            double elbow = onLeft ? lanesFrom : lanesTo;
            yield return new Line(new(lane, y), entry.At, Style.Line(entry.Tone, 0.16, Dash.Dotted));
            foreach (DrawingItem item in inView ? Band(entry, lane, y, width) : [])
            {
                yield return item;
            }

            yield return new Polyline([new(lane, y), new(elbow, y), new(inner + (onLeft ? 0.8 : -0.8), middles[i])], Style.Line(entry.Tone, 0.18));
            double baseLine = middles[i] - ((lines[i].Count - 1) * LineMm / 2) + 0.9;
            foreach ((string words, bool bold) in lines[i])
            {
                yield return new Text(
                    new(onLeft ? labelsTo : labelsFrom, baseLine), words, bold ? NamePt : WordsPt, onLeft ? TextAnchor.End : TextAnchor.Start, Colour: bold ? entry.Tone : Colour.Ink, Bold: bold);
                baseLine += LineMm;
            }
        }
    }

    private IEnumerable<DrawingItem> Band(MarginEntry entry, double lane, double y, double width)
    {
        double half = width * 0.27;
        if (entry.Zone is PortZone zone)
        {
            double edge = width * 0.42;
            yield return new Rectangle(
                new Box(lane - edge, frame.ClampedY(zone.LowMm), lane + edge, frame.ClampedY(zone.HighMm)),
                new Style { Stroke = zone.Acceptable ? Colour.Accepted : Colour.Refused, StrokeWidthMm = 0.4, Dash = zone.Acceptable ? Dash.Solid : Dash.Dashed },
                0.5);
        }

        double top = frame.ClampedY(entry.Position.Low);
        double bottom = frame.ClampedY(entry.Position.High);
        if (bottom - top > 0.3)
        {
            yield return new Rectangle(new Box(lane - half, top, lane + half, bottom), Style.Hatched(entry.Hatch, entry.Tone) with { HatchSpacingMm = 0.7 });
        }

        if (entry.SpanMm > 0)
        {
            double reach = entry.SpanMm / 2;
            yield return new Line(
                new(lane, frame.ClampedY(entry.Position.Median - reach)), new(lane, frame.ClampedY(entry.Position.Median + reach)), Style.Line(entry.Tone, 0.7));
        }

        yield return new Line(new(lane - (width * 0.45), y), new(lane + (width * 0.45), y), Style.Line(entry.Tone, 0.6));
    }

    private List<(string Words, bool Bold)> Wrapped(MarginEntry entry)
    {
        double width = labelsTo - labelsFrom;
        return
        [
            .. entry.Lines.SelectMany((line, i) => TextMetrics
                .Wrapped(PrintableText.OneLine(line), width, i == 0 ? NamePt : WordsPt, i == 0)
                .Select(words => (words, i == 0))),
        ];
    }

    /// <summary>First lane in which a band meets no other.</summary>
    private int[] Lanes(MarginEntry[] ordered)
    {
        var ends = new List<double>();
        int[] lanes = new int[ordered.Length];
        int[] byTop = [.. Enumerable.Range(0, ordered.Length).OrderBy(i => Extent(ordered[i]).Top).ThenBy(i => i)];
        foreach (int i in byTop)
        {
            (double top, double bottom) = Extent(ordered[i]);
            int lane = ends.FindIndex(e => e < top - 0.6);
            if (lane < 0)
            {
                lane = ends.Count;
                ends.Add(bottom);
            }

            ends[lane] = bottom;
            lanes[i] = lane;
        }

        return lanes;
    }

    private (double Top, double Bottom) Extent(MarginEntry entry)
    {
        double low = Math.Min(entry.Position.Low, Math.Min(entry.Zone?.LowMm ?? double.PositiveInfinity, entry.Position.Median - (entry.SpanMm / 2)));
        double high = Math.Max(entry.Position.High, Math.Max(entry.Zone?.HighMm ?? double.NegativeInfinity, entry.Position.Median + (entry.SpanMm / 2)));
        return (frame.ClampedY(low), frame.ClampedY(high));
    }
}
