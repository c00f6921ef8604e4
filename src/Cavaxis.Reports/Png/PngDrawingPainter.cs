using Cavaxis.Reports.Drawings;
using SkiaSharp;

namespace Cavaxis.Reports.Png;

/// <summary>Paints a drawing on a canvas whose unit is a millimetre: the same items, hatch lines and dashes as in the SVG.</summary>
/// <param name="canvas">The canvas.</param>
/// <param name="fonts">Faces of the text.</param>
internal sealed class PngDrawingPainter(SKCanvas canvas, PngFonts fonts)
{
    /// <summary>Paints all items in order.</summary>
    /// <param name="drawing">The drawing.</param>
    internal void Paint(Drawing drawing)
    {
        foreach (DrawingItem item in drawing.Items)
        {
            Paint(item);
        }
    }

    /// <summary>A colour of the drawing on the canvas.</summary>
    /// <param name="colour">The colour.</param>
    /// <param name="opacity">0 to 1.</param>
    /// <returns>The same colour.</returns>
    internal static SKColor Tone(Colour colour, double opacity) =>
        new(colour.Red, colour.Green, colour.Blue, (byte)Math.Round(255 * opacity));

    private void Paint(DrawingItem item)
    {
        switch (item)
        {
            case Line line:
                Stroke([line.From, line.To], line.Style);
                break;
            case Polyline polyline:
                Stroke(polyline.Points, polyline.Style);
                break;
            case Polygon polygon:
                Shape(polygon, polygon.Style, paint => Path(polygon.Points, close: true, paint));
                break;
            case Rectangle { Bounds: var b } rectangle:
                SKRect bounds = new((float)b.Left, (float)b.Top, (float)b.Right, (float)b.Bottom);
                Shape(rectangle, rectangle.Style, paint => canvas.DrawRoundRect(bounds, (float)rectangle.CornerMm, (float)rectangle.CornerMm, paint));
                break;
            case Circle circle:
                Shape(circle, circle.Style, paint => canvas.DrawCircle(At(circle.Centre), (float)circle.RadiusMm, paint));
                break;
            case Arrow arrow:
                (IReadOnlyList<Point> head, Point end) = Outline.ArrowHead(arrow);
                Stroke([arrow.From, end], arrow.Style);
                using (SKPaint fill = Fill(arrow.Style.Stroke ?? Colour.Ink, 1))
                {
                    Path(head, close: true, fill);
                }

                break;
            case Text text:
                Letter(text);
                break;
        }
    }

    private void Shape(DrawingItem item, Style style, Action<SKPaint> draw)
    {
        if (style.Fill is Colour colour)
        {
            using SKPaint fill = Fill(colour, style.Opacity);
            draw(fill);
        }

        if (Pen(style) is SKPaint pen)
        {
            using (pen)
            {
                draw(pen);
            }
        }

        using SKPaint hatch = Pen(Style.Line(style.HatchColour, SvgWriter.HatchWidthMm) with { Opacity = style.Opacity })!;
        foreach ((Point from, Point to) in HatchLines.Inside(Outline.Of(item), style.Hatch, style.HatchSpacingMm))
        {
            canvas.DrawLine(At(from), At(to), hatch);
        }
    }

    private void Stroke(IReadOnlyList<Point> points, Style style)
    {
        if (Pen(style) is SKPaint pen)
        {
            using (pen)
            {
                Path(points, close: false, pen);
            }
        }
    }

    private void Path(IReadOnlyList<Point> points, bool close, SKPaint paint)
    {
        using SKPathBuilder builder = new();
        builder.AddPoly([.. points.Select(At)], close);
        using SKPath path = builder.Detach();
        canvas.DrawPath(path, paint);
    }

    private void Letter(Text text)
    {
        string words = PrintableText.OneLine(text.Content);
        if (words.Length == 0)
        {
            return;
        }

        using SKFont font = fonts.Of(text.SizePt, text.Bold);
        using SKPaint ink = Fill(text.Colour ?? Colour.Ink, 1);
        SKTextAlign align = text.Anchor switch
        {
            TextAnchor.Middle => SKTextAlign.Center,
            TextAnchor.End => SKTextAlign.Right,
            _ => SKTextAlign.Left,
        };
        canvas.Save();
        canvas.RotateDegrees((float)text.RotationDeg, (float)text.At.X, (float)text.At.Y);
        canvas.DrawText(words, At(text.At), align, font, ink);
        canvas.Restore();
    }

    private static SKPaint Fill(Colour colour, double opacity) =>
        new() { IsAntialias = true, Style = SKPaintStyle.Fill, Color = Tone(colour, opacity) };

    private static SKPaint? Pen(Style style)
    {
        if (style.Stroke is not Colour stroke)
        {
            return null;
        }

        SKPaint pen = new()
        {
            IsAntialias = true,
            Style = SKPaintStyle.Stroke,
            Color = Tone(stroke, style.Opacity),
            StrokeWidth = (float)style.StrokeWidthMm,
            StrokeJoin = SKStrokeJoin.Round,
        };
        float[] lengths = [.. DashPattern.LengthsMm(style.Dash).Select(static l => (float)l)];
        if (lengths.Length > 0)
        {
            using SKPathEffect dashes = SKPathEffect.CreateDash(lengths, 0);
            pen.PathEffect = dashes;
        }

        return pen;
    }

    private static SKPoint At(Point p) => new((float)p.X, (float)p.Y);
}
