using System.Globalization;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.OnePage;

/// <summary>One quantity over the last hours, small: every reading with its error; where they stand too close to tell apart, the range in each narrow stretch of time.</summary>
/// <param name="Title">The quantity.</param>
/// <param name="Last">The last reading in words, with its unit.</param>
/// <param name="Dots">At least one reading.</param>
/// <param name="Hours">Hours that the drawing spans.</param>
public sealed record SmallTrend(string Title, string Last, IReadOnlyList<TrendDot> Dots, double Hours)
{
    /// <summary>Height, mm.</summary>
    public const double HeightMm = 20;

    private const double TextPt = 6.2;
    private const double ScalePt = 5.4;
    private const int MostDots = 80;
    private const int Stretches = 60;

    /// <summary>What it shows, in words.</summary>
    public string Words => string.Create(
        CultureInfo.InvariantCulture, $"{Title}: {Dots.Count} {(Dots.Count == 1 ? "reading" : "readings")} in the last {Hours:0} h, from {Number(Dots.Min(static d => d.Value))} to {Number(Dots.Max(static d => d.Value))}. Last: {Last}.");

    /// <summary>Draws it.</summary>
    /// <param name="left">Left edge, mm.</param>
    /// <param name="top">Upper edge, mm.</param>
    /// <param name="width">Width, mm.</param>
    /// <returns>The items.</returns>
    public IReadOnlyList<DrawingItem> Paint(double left, double top, double width)
    {
        (double low, double high) = (Dots.Min(static d => d.Value - d.Sd), Dots.Max(static d => d.Value + d.Sd));
        double span = high > low ? high - low : 1;
        double titlePt = Math.Clamp(TextPt * width / Math.Max(1, TextMetrics.WidthMm(Title, TextPt, true)), 5, TextPt) - 0.01;
        string lowWords = Number(Dots.Min(static d => d.Value));
        string highWords = Number(Dots.Max(static d => d.Value));
        double scale = Math.Max(TextMetrics.WidthMm(lowWords, ScalePt), TextMetrics.WidthMm(highWords, ScalePt)) + 1;
        Box area = new(left + scale, top + 6.6, left + width - 0.6, top + HeightMm - 3.4);
        double X(TrendDot d) => area.Right - (area.Width * Math.Clamp(d.HoursAgo / Hours, 0, 1));
        double Y(double value) => high > low ? area.Bottom - (area.Height * (value - low) / span) : (area.Top + area.Bottom) / 2;
        List<DrawingItem> items =
        [
            new Text(new(left, top + 2.4), PageText.Cut(Title, width, titlePt, true), titlePt, Bold: true),
            new Text(new(left, top + 5), PageText.Cut(Last, width, TextPt, false), TextPt, Colour: Colour.Muted),
            new Polyline([new(area.Left, area.Top), new(area.Left, area.Bottom), new(area.Right, area.Bottom)], Style.Line(Colour.Faint, 0.2)),
            new Text(new(area.Left, top + HeightMm - 0.8), string.Create(CultureInfo.InvariantCulture, $"−{Hours:0} h"), ScalePt, Colour: Colour.Muted),
            new Text(new(area.Right, top + HeightMm - 0.8), "now", ScalePt, TextAnchor.End, Colour: Colour.Muted),
        ];
        (double yHigh, double yLow) = lowWords == highWords ? (Y(Dots[^1].Value) + 0.7, 0) : ScaleRows(Y(Dots.Max(static d => d.Value)), Y(Dots.Min(static d => d.Value)), area);
        items.Add(new Text(new(area.Left - 0.6, yHigh), highWords, ScalePt, TextAnchor.End, Colour: Colour.Muted));
        if (lowWords != highWords)
        {
            items.Add(new Text(new(area.Left - 0.6, yLow), lowWords, ScalePt, TextAnchor.End, Colour: Colour.Muted));
        }

        items.AddRange(Dots.Count <= MostDots
            ? Dots.SelectMany(d => new DrawingItem[]
            {
                new Line(new(X(d), Y(d.Value - d.Sd)), new(X(d), Y(d.Value + d.Sd)), Style.Line(Colour.Faint, 0.25)),
                new Circle(new(X(d), Y(d.Value)), 0.45, Style.Area(Colour.Drainage)),
            })
            : Dots.GroupBy(d => (int)Math.Floor(Math.Clamp(d.HoursAgo / Hours, 0, 0.9999) * Stretches)).OrderBy(static g => g.Key).SelectMany(g => new DrawingItem[]
            {
                new Line(new(X(g.First()), Y(g.Min(static d => d.Value))), new(X(g.First()), Y(g.Max(static d => d.Value))), Style.Line(Colour.Drainage, 0.35)),
                new Circle(new(X(g.First()), Y(g.Last().Value)), 0.3, Style.Area(Colour.Drainage)),
            }));
        return items;
    }

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture).Replace('-', '−');

    // The two numbers stand beside the readings they name, and never on each other.
    private static (double High, double Low) ScaleRows(double high, double low, Box area)
    {
        const double Row = 2.1;
        double below = Math.Min(low + 0.7, area.Bottom + 0.7);
        double above = Math.Min(high + 0.7, below - Row);
        return above < area.Top + 0.7 - 0.4 ? (area.Top + 0.7, Math.Max(below, area.Top + 0.7 + Row)) : (above, below);
    }
}
