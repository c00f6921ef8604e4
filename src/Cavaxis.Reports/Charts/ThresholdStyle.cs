using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Charts;

/// <summary>Line style and sign of each kind of threshold.</summary>
internal static class ThresholdStyle
{
    /// <summary>The line.</summary>
    internal static Style Of(ThresholdKind kind) => kind switch
    {
        ThresholdKind.Limit => Style.Line(Colour.Refused, 0.5, Dash.LongDash),
        ThresholdKind.Caution => Style.Line(new Colour(0x8A, 0x6A, 0x00), 0.4, Dash.Dashed),
        _ => Style.Line(Colour.Accepted, 0.4, Dash.DashDot),
    };

    /// <summary>The sign: square for a limit, triangle for caution, disc for a target.</summary>
    internal static DrawingItem Sign(ThresholdKind kind, Point c)
    {
        var style = new Style { Fill = Colour.Paper, Stroke = Of(kind).Stroke, StrokeWidthMm = 0.4 };
        return kind switch
        {
            ThresholdKind.Limit => new Rectangle(new Box(c.X - 1, c.Y - 1, c.X + 1, c.Y + 1), style),
            ThresholdKind.Caution => new Polygon([c.Moved(0, -1.3), c.Moved(1.3, 1), c.Moved(-1.3, 1)], style),
            _ => new Circle(c, 1, style),
        };
    }
}
