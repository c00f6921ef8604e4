using Cavaxis.Reports.Drawings;
using PdfSharp.Drawing;

namespace Cavaxis.Reports.Pdf;

/// <summary>Paints a drawing on a PDF page: the same items, hatch lines and dashes as in the SVG.</summary>
internal sealed class PdfDrawingPainter
{
    private readonly XGraphics graphics;
    private readonly Point origin;
    private readonly double scale;

    /// <summary>Prepares to paint.</summary>
    /// <param name="graphics">The page.</param>
    /// <param name="left">Left edge of the drawing, points.</param>
    /// <param name="top">Upper edge of the drawing, points.</param>
    /// <param name="shrink">1 for true size.</param>
    internal PdfDrawingPainter(XGraphics graphics, double left, double top, double shrink)
    {
        this.graphics = graphics;
        origin = new Point(left, top);
        scale = shrink / TextMetrics.MmPerPoint;
    }

    /// <summary>Paints all items in order.</summary>
    /// <param name="drawing">The drawing.</param>
    internal void Paint(Drawing drawing)
    {
        foreach (DrawingItem item in drawing.Items)
        {
            Paint(item);
        }
    }

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
                graphics.DrawPolygon(PenFor(polygon.Style), BrushFor(polygon.Style), [.. polygon.Points.Select(At)], XFillMode.Winding);
                PaintHatch(polygon, polygon.Style);
                break;
            case Rectangle { Bounds: var b } rectangle:
                PaintRectangle(rectangle, new XRect(At(new(b.Left, b.Top)), At(new(b.Right, b.Bottom))));
                break;
            case Circle circle:
                double r = circle.RadiusMm;
                graphics.DrawEllipse(
                    PenFor(circle.Style), BrushFor(circle.Style), new XRect(At(circle.Centre.Moved(-r, -r)), At(circle.Centre.Moved(r, r))));
                PaintHatch(circle, circle.Style);
                break;
            case Arrow arrow:
                (IReadOnlyList<Point> head, Point end) = Outline.ArrowHead(arrow);
                Stroke([arrow.From, end], arrow.Style);
                graphics.DrawPolygon(new XSolidBrush(Tone(arrow.Style.Stroke ?? Colour.Ink, 1)), [.. head.Select(At)], XFillMode.Winding);
                break;
            case Text text:
                PaintText(text);
                break;
        }
    }

    private void PaintRectangle(Rectangle rectangle, XRect bounds)
    {
        if (rectangle.CornerMm > 0)
        {
            double corner = 2 * rectangle.CornerMm * scale;
            graphics.DrawRoundedRectangle(PenFor(rectangle.Style), BrushFor(rectangle.Style), bounds, new XSize(corner, corner));
        }
        else
        {
            graphics.DrawRectangle(PenFor(rectangle.Style), BrushFor(rectangle.Style), bounds);
        }

        PaintHatch(rectangle, rectangle.Style);
    }

    private void PaintText(Text text)
    {
        string words = PrintableText.OneLine(text.Content);
        if (words.Length == 0)
        {
            return;
        }

        XFont font = PdfFonts.Of(text.SizePt * scale * TextMetrics.MmPerPoint, text.Bold);
        XStringFormat format = text.Anchor switch
        {
            TextAnchor.Middle => XStringFormats.BaseLineCenter,
            TextAnchor.End => XStringFormats.BaseLineRight,
            _ => XStringFormats.BaseLineLeft,
        };
        XPoint at = At(text.At);
        var brush = new XSolidBrush(Tone(text.Colour ?? Colour.Ink, 1));
        if (text.RotationDeg == 0)
        {
            graphics.DrawString(words, font, brush, at, format);
            return;
        }

        XGraphicsState state = graphics.Save();
        graphics.RotateAtTransform(text.RotationDeg, at);
        graphics.DrawString(words, font, brush, at, format);
        graphics.Restore(state);
    }

    private void PaintHatch(DrawingItem item, Style style)
    {
        XPen pen = new(Tone(style.HatchColour, style.Opacity), SvgWriter.HatchWidthMm * scale);
        foreach ((Point from, Point to) in HatchLines.Inside(Outline.Of(item), style.Hatch, style.HatchSpacingMm))
        {
            graphics.DrawLine(pen, At(from), At(to));
        }
    }

    private void Stroke(IReadOnlyList<Point> points, Style style)
    {
        if (PenFor(style) is XPen pen)
        {
            graphics.DrawLines(pen, [.. points.Select(At)]);
        }
    }

    private XPen? PenFor(Style style)
    {
        if (style.Stroke is not Colour stroke)
        {
            return null;
        }

        var pen = new XPen(Tone(stroke, style.Opacity), style.StrokeWidthMm * scale) { LineJoin = XLineJoin.Round };
        IReadOnlyList<double> lengths = DashPattern.LengthsMm(style.Dash);
        if (lengths.Count > 0)
        {
            // The library counts dashes in widths of the pen.
            pen.DashPattern = [.. lengths.Select(l => l / style.StrokeWidthMm)];
        }

        return pen;
    }

    private static XSolidBrush? BrushFor(Style style) =>
        style.Fill is Colour fill ? new XSolidBrush(Tone(fill, style.Opacity)) : null;

    private XPoint At(Point p) => new(origin.X + (p.X * scale), origin.Y + (p.Y * scale));

    private static XColor Tone(Colour colour, double opacity) =>
        XColor.FromArgb((int)Math.Round(255 * opacity), colour.Red, colour.Green, colour.Blue);
}
