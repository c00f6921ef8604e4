using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Charts;

/// <summary>Line styles and marker shapes by the place of a series in its chart.</summary>
internal static class SeriesMarker
{
    private const double HalfMm = 0.9;

    private static readonly Dash[] Dashes = [Dash.Solid, Dash.Dashed, Dash.DashDot, Dash.Dotted, Dash.LongDash];

    /// <summary>Line style of the series.</summary>
    internal static Style LineStyle(int index) => Style.Line(Tone(index), 0.5, Dashes[index % Dashes.Length]);

    /// <summary>Colour of the series.</summary>
    internal static Colour Tone(int index) => Colour.Series[index % Colour.Series.Count];

    /// <summary>The marker of the series at a place: disc, square, triangle, diamond, ring or open square.</summary>
    internal static DrawingItem At(int index, Point p)
    {
        var full = new Style { Fill = Tone(index), Stroke = Colour.Paper, StrokeWidthMm = 0.2 };
        var open = new Style { Fill = Colour.Paper, Stroke = Tone(index), StrokeWidthMm = 0.4 };
        return (index % 6) switch
        {
            0 => new Circle(p, HalfMm, full),
            1 => new Rectangle(new Box(p.X - HalfMm, p.Y - HalfMm, p.X + HalfMm, p.Y + HalfMm), full),
            2 => new Polygon([p.Moved(0, -1.2), p.Moved(1.1, 0.8), p.Moved(-1.1, 0.8)], full),
            3 => new Polygon([p.Moved(0, -1.2), p.Moved(1.2, 0), p.Moved(0, 1.2), p.Moved(-1.2, 0)], full),
            4 => new Circle(p, HalfMm, open),
            _ => new Rectangle(new Box(p.X - HalfMm, p.Y - HalfMm, p.X + HalfMm, p.Y + HalfMm), open),
        };
    }
}
