using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Charts;

/// <summary>Lays out and paints one chart: frame, bands, thresholds, lines, points, then the labels.</summary>
internal sealed class LineChartPainter
{
    private const double SmallPt = 7.5;
    private const double LabelColumnMm = 50;
    private const double KeyHalfMm = 3;

    private readonly LineChart chart;
    private readonly PlotFrame frame;
    private readonly List<DrawingItem> items = [];
    private readonly List<EndLabel> labels = [];

    /// <summary>Checks the chart and lays out its frame.</summary>
    /// <param name="chart">The chart.</param>
    internal LineChartPainter(LineChart chart)
    {
        this.chart = chart;
        ChartValues.Check(chart);
        Ticks x = ChartValues.TicksFor(chart.X, ChartValues.OfX(chart), 7);
        Ticks y = ChartValues.TicksFor(chart.Y, ChartValues.OfY(chart), 6);
        double left = 3 + y.Values.Max(v => TextMetrics.WidthMm(y.Label(v), SmallPt)) + 2;
        double top = 13 + (UprightThresholdRows.RowMm * chart.Thresholds.Count(t => t.OnX));
        var area = new Box(left, top, chart.WidthMm - LabelColumnMm, chart.HeightMm - 12);
        if (area.Width < 20 || area.Height < 15)
        {
            throw new ArgumentException("The chart is too small for its labels.");
        }

        frame = new PlotFrame(area, x, y, chart.X.Scale, chart.Y.Scale);
    }

    /// <summary>Paints the chart.</summary>
    /// <returns>The drawing.</returns>
    internal Drawing Paint()
    {
        items.Add(new Text(new Point(0, 4), PrintableText.OneLine(chart.Title), 9, Bold: true));
        PaintGrid();
        PaintBands();
        PaintThresholds();
        PaintSeries();
        items.AddRange(OperatingPointPainter.Paint(chart, frame));
        items.AddRange(EndLabel.Stack(labels, new Box(frame.Area.Right, 7, chart.WidthMm, chart.HeightMm - 1)));
        return new Drawing(chart.WidthMm, chart.HeightMm, chart.Title, chart.Description, items);
    }

    private void PaintGrid()
    {
        Box a = frame.Area;
        double lastRight = double.NegativeInfinity;
        foreach (double value in frame.XTicks.Values)
        {
            double x = frame.AtX(value);
            items.Add(new Line(new(x, a.Top), new(x, a.Bottom), Style.Line(Colour.Faint, 0.12)));
            items.Add(new Line(new(x, a.Bottom), new(x, a.Bottom + 1), Style.Line(Colour.Ink, 0.2)));
            var text = new Text(new(x, a.Bottom + 4.2), frame.XTicks.Label(value), SmallPt, TextAnchor.Middle);
            Box bounds = TextMetrics.BoundsOf(text);
            if (bounds.Left > lastRight + 1)
            {
                items.Add(text);
                lastRight = bounds.Right;
            }
        }

        foreach (double value in frame.YTicks.Values)
        {
            double y = frame.AtY(value);
            items.Add(new Line(new(a.Left, y), new(a.Right, y), Style.Line(Colour.Faint, 0.12)));
            items.Add(new Line(new(a.Left - 1, y), new(a.Left, y), Style.Line(Colour.Ink, 0.2)));
            items.Add(new Text(new(a.Left - 1.6, y + 0.95), frame.YTicks.Label(value), SmallPt, TextAnchor.End));
        }

        items.Add(new Polyline([new(a.Left, a.Top), new(a.Left, a.Bottom), new(a.Right, a.Bottom)], Style.Line(Colour.Ink, 0.25)));
        items.Add(new Text(new(0, 8.6), PrintableText.OneLine(chart.Y.Label), SmallPt, Colour: Colour.Muted));
        items.Add(new Text(
            new((a.Left + a.Right) / 2, a.Bottom + 8.8), PrintableText.OneLine(chart.X.Label), SmallPt, TextAnchor.Middle, Colour: Colour.Muted));
    }

    private void PaintBands()
    {
        Hatch[] patterns = [Hatch.Rising, Hatch.Falling, Hatch.Crossed, Hatch.Level];
        for (int i = 0; i < chart.Bands.Count; i++)
        {
            ChartBand band = chart.Bands[i];
            Style style = Style.Hatched(patterns[i % patterns.Length], SeriesMarker.Tone(i)) with { Opacity = 0.75 };
            items.Add(new Polygon(
                [.. band.Points.Select(p => frame.At(p.X, p.High)), .. band.Points.Reverse().Select(p => frame.At(p.X, p.Low))], style));
            BandPoint last = band.Points[^1];
            labels.Add(new EndLabel(
                band.Name,
                frame.At(last.X, last.Low),
                SeriesMarker.Tone(i),
                c => [new Rectangle(new Box(c.X - KeyHalfMm, c.Y - 1.1, c.X + KeyHalfMm, c.Y + 1.1), style)]));
        }
    }

    private void PaintThresholds()
    {
        foreach (Threshold threshold in chart.Thresholds.Where(t => !t.OnX))
        {
            Style style = ThresholdStyle.Of(threshold.Kind);
            double y = frame.AtY(threshold.Value);
            items.Add(new Line(new(frame.Area.Left, y), new(frame.Area.Right, y), style));
            labels.Add(new EndLabel(
                threshold.Words,
                new Point(frame.Area.Right, y),
                style.Stroke ?? Colour.Ink,
                c => [new Line(c.Moved(-KeyHalfMm, 0), c.Moved(KeyHalfMm, 0), style), ThresholdStyle.Sign(threshold.Kind, c)]));
        }

        items.AddRange(UprightThresholdRows.Paint([.. chart.Thresholds.Where(t => t.OnX)], frame));
    }

    private void PaintSeries()
    {
        for (int i = 0; i < chart.Series.Count; i++)
        {
            ChartSeries series = chart.Series[i];
            int index = i;
            Point[] points = [.. series.Points.Select(p => frame.At(p.X, p.Y))];
            if (points.Length > 1 && series.Joined)
            {
                items.Add(new Polyline(points, SeriesMarker.LineStyle(i)));
            }

            bool markers = series.Markers || !series.Joined || points.Length == 1;
            items.AddRange(markers ? points.Select(p => SeriesMarker.At(index, p)) : []);
            labels.Add(new EndLabel(
                series.Name,
                points.MaxBy(p => p.X),
                SeriesMarker.Tone(i),
                c =>
                [
                    .. series.Joined ? new[] { new Line(c.Moved(-KeyHalfMm, 0), c.Moved(KeyHalfMm, 0), SeriesMarker.LineStyle(index)) } : [],
                    .. markers ? new[] { SeriesMarker.At(index, c) } : [],
                ]));
        }
    }
}
