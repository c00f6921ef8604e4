using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Charts;

/// <summary>Paints marked points with their error bars and finds the emptiest place near each for its words.</summary>
internal static class OperatingPointPainter
{
    private const double SizePt = 7.5;
    private const double CapMm = 0.9;

    private static readonly (double X, double Y, TextAnchor Anchor)[] Places =
    [
        (2.4, -2.2, TextAnchor.Start), (-2.4, -2.2, TextAnchor.End), (2.4, 4.2, TextAnchor.Start), (-2.4, 4.2, TextAnchor.End),
        (0, -5, TextAnchor.Middle), (0, 7, TextAnchor.Middle), (6, -7, TextAnchor.Start), (-6, -7, TextAnchor.End),
        (6, 9, TextAnchor.Start), (-6, 9, TextAnchor.End), (0, -11, TextAnchor.Middle), (0, 13, TextAnchor.Middle),
    ];

    /// <summary>All marked points of a chart.</summary>
    internal static IEnumerable<DrawingItem> Paint(LineChart chart, PlotFrame frame)
    {
        var busy = new List<Point>();
        foreach (ChartSeries series in chart.Series)
        {
            busy.AddRange(Dense([.. series.Points.Select(p => frame.At(p.X, p.Y))]));
        }

        foreach (Threshold threshold in chart.Thresholds)
        {
            busy.AddRange(threshold.OnX
                ? Dense([new(frame.AtX(threshold.Value), frame.Area.Top), new(frame.AtX(threshold.Value), frame.Area.Bottom)])
                : Dense([new(frame.Area.Left, frame.AtY(threshold.Value)), new(frame.Area.Right, frame.AtY(threshold.Value))]));
        }

        foreach (OperatingPoint point in chart.Points)
        {
            busy.AddRange(Bars(point, frame).OfType<Line>().SelectMany(l => Dense([l.From, l.To])));
        }

        var taken = new List<Box>();
        foreach (OperatingPoint point in chart.Points)
        {
            foreach (DrawingItem item in Bars(point, frame))
            {
                yield return item;
            }

            Point at = frame.At(point.X, point.Y);
            yield return new Circle(at, 1.5, new Style { Fill = Colour.Paper, Stroke = Colour.Ink, StrokeWidthMm = 0.5 });
            yield return new Circle(at, 0.6, Style.Area(Colour.Ink));
            Text words = Best(PrintableText.OneLine(point.Name), at, frame.Area, busy, taken);
            Box bounds = TextMetrics.BoundsOf(words);
            taken.Add(bounds);
            yield return new Rectangle(bounds, Style.Area(Colour.Paper, 0.85));
            yield return words;
        }
    }

    private static IEnumerable<DrawingItem> Bars(OperatingPoint point, PlotFrame frame)
    {
        Style style = Style.Line(Colour.Ink, 0.35);
        double x = frame.AtX(point.X);
        double y = frame.AtY(point.Y);
        if (point.XLow is double xLow && point.XHigh is double xHigh)
        {
            (double a, double b) = (frame.AtX(xLow), frame.AtX(xHigh));
            yield return new Line(new(a, y), new(b, y), style);
            yield return new Line(new(a, y - CapMm), new(a, y + CapMm), style);
            yield return new Line(new(b, y - CapMm), new(b, y + CapMm), style);
        }

        if (point.YLow is double yLow && point.YHigh is double yHigh)
        {
            (double a, double b) = (frame.AtY(yLow), frame.AtY(yHigh));
            yield return new Line(new(x, a), new(x, b), style);
            yield return new Line(new(x - CapMm, a), new(x + CapMm, a), style);
            yield return new Line(new(x - CapMm, b), new(x + CapMm, b), style);
        }
    }

    private static Text Best(string words, Point at, Box area, List<Point> busy, List<Box> taken)
    {
        Text? best = null;
        double least = double.PositiveInfinity;
        foreach ((double dx, double dy, TextAnchor anchor) in Places)
        {
            var text = new Text(at.Moved(dx, dy), words, SizePt, anchor, Bold: true);
            Box box = TextMetrics.BoundsOf(text);
            double cost = busy.Count(p => box.Overlaps(new Box(p.X - 0.4, p.Y - 0.4, p.X + 0.4, p.Y + 0.4)))
                + (taken.Sum(t => t.SharedArea(box)) * 1000)
                + (area.Holds(box, 0.2) ? 0 : 200)
                + (Math.Abs(dx) + Math.Abs(dy)) / 100;
            if (cost < least)
            {
                (best, least) = (text, cost);
            }
        }

        return best!;
    }

    private static IEnumerable<Point> Dense(IReadOnlyList<Point> line)
    {
        for (int i = 0; i + 1 < line.Count; i++)
        {
            int steps = Math.Max(1, (int)Math.Ceiling(line[i].DistanceTo(line[i + 1]) / 0.6));
            for (int k = 0; k <= steps; k++)
            {
                double t = (double)k / steps;
                yield return new Point(
                    line[i].X + (t * (line[i + 1].X - line[i].X)), line[i].Y + (t * (line[i + 1].Y - line[i].Y)));
            }
        }
    }
}
