using System.Globalization;
using System.Text;

namespace Cavaxis.Reports.Drawings;

/// <summary>Writes a drawing as self-contained SVG: no style sheet, script, font file or link; the same drawing gives the same text.</summary>
public static class SvgWriter
{
    private const string FontFamily = "DejaVu Sans, Verdana, Segoe UI, Helvetica, Arial, sans-serif";

    /// <summary>The drawing as an <c>svg</c> element.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="idPrefix">Start of the two identifiers inside; differs between drawings on one page. Letters, digits, hyphens.</param>
    /// <returns>Well-formed XML without declaration.</returns>
    /// <exception cref="ArgumentException">The prefix holds other characters.</exception>
    public static string Write(Drawing drawing, string idPrefix = "drawing")
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentException.ThrowIfNullOrEmpty(idPrefix);
        if (!idPrefix.All(static c => char.IsAsciiLetterOrDigit(c) || c == '-'))
        {
            throw new ArgumentException("An identifier takes letters, digits and hyphens only.", nameof(idPrefix));
        }

        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{Number(drawing.WidthMm)}mm\" height=\"{Number(drawing.HeightMm)}mm\" viewBox=\"0 0 {Number(drawing.WidthMm)} {Number(drawing.HeightMm)}\" role=\"img\" aria-labelledby=\"{idPrefix}-title {idPrefix}-desc\" font-family=\"{FontFamily}\">\n");
        svg.Append(CultureInfo.InvariantCulture, $"<title id=\"{idPrefix}-title\">{Escaped(drawing.Title)}</title>\n");
        svg.Append(CultureInfo.InvariantCulture, $"<desc id=\"{idPrefix}-desc\">{Escaped(drawing.Description)}</desc>\n");

        // The drawing carries its own paper, so that it stays legible on a dark page.
        svg.Append(CultureInfo.InvariantCulture, $"<rect width=\"{Number(drawing.WidthMm)}\" height=\"{Number(drawing.HeightMm)}\" fill=\"{Colour.Paper.ToHex()}\"/>\n");
        foreach (DrawingItem item in drawing.Items)
        {
            Append(svg, item);
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void Append(StringBuilder svg, DrawingItem item)
    {
        switch (item)
        {
            case Line line:
                svg.Append(CultureInfo.InvariantCulture, $"<path d=\"{PathOf([line.From, line.To], close: false)}\"{Paint(line.Style, filled: false)}/>\n");
                break;
            case Polyline polyline:
                svg.Append(CultureInfo.InvariantCulture, $"<path d=\"{PathOf(polyline.Points, close: false)}\"{Paint(polyline.Style, filled: false)}/>\n");
                break;
            case Polygon polygon:
                svg.Append(CultureInfo.InvariantCulture, $"<path d=\"{PathOf(polygon.Points, close: true)}\"{Paint(polygon.Style, filled: true)}/>\n");
                AppendHatch(svg, polygon, polygon.Style);
                break;
            case Rectangle { Bounds: var b } rectangle:
                svg.Append(CultureInfo.InvariantCulture, $"<rect x=\"{Number(b.Left)}\" y=\"{Number(b.Top)}\" width=\"{Number(b.Width)}\" height=\"{Number(b.Height)}\"{(rectangle.CornerMm > 0 ? $" rx=\"{Number(rectangle.CornerMm)}\"" : string.Empty)}{Paint(rectangle.Style, filled: true)}/>\n");
                AppendHatch(svg, rectangle, rectangle.Style);
                break;
            case Circle circle:
                svg.Append(CultureInfo.InvariantCulture, $"<circle cx=\"{Number(circle.Centre.X)}\" cy=\"{Number(circle.Centre.Y)}\" r=\"{Number(circle.RadiusMm)}\"{Paint(circle.Style, filled: true)}/>\n");
                AppendHatch(svg, circle, circle.Style);
                break;
            case Arrow arrow:
                (IReadOnlyList<Point> head, Point end) = Outline.ArrowHead(arrow);
                svg.Append(CultureInfo.InvariantCulture, $"<path d=\"{PathOf([arrow.From, end], close: false)}\"{Paint(arrow.Style, filled: false)}/>\n");
                svg.Append(CultureInfo.InvariantCulture, $"<path d=\"{PathOf(head, close: true)}\" fill=\"{(arrow.Style.Stroke ?? Colour.Ink).ToHex()}\"/>\n");
                break;
            case Text text:
                AppendText(svg, text);
                break;
        }
    }

    private static void AppendHatch(StringBuilder svg, DrawingItem item, Style style)
    {
        IReadOnlyList<(Point From, Point To)> pieces = HatchLines.Inside(Outline.Of(item), style.Hatch, style.HatchSpacingMm);
        if (pieces.Count > 0)
        {
            string path = string.Concat(pieces.Select(p => PathOf([p.From, p.To], close: false)));
            svg.Append(CultureInfo.InvariantCulture, $"<path d=\"{path}\"{Paint(Style.Line(style.HatchColour, HatchWidthMm) with { Opacity = style.Opacity }, filled: false)}/>\n");
        }
    }

    private static void AppendText(StringBuilder svg, Text text)
    {
        string anchor = text.Anchor switch { TextAnchor.Middle => " text-anchor=\"middle\"", TextAnchor.End => " text-anchor=\"end\"", _ => string.Empty };
        string turn = text.RotationDeg == 0
            ? string.Empty
            : $" transform=\"rotate({Number(text.RotationDeg)} {Number(text.At.X)} {Number(text.At.Y)})\"";
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{Number(text.At.X)}\" y=\"{Number(text.At.Y)}\" font-size=\"{Number(text.SizePt * TextMetrics.MmPerPoint)}\"{(text.Bold ? " font-weight=\"bold\"" : string.Empty)}{anchor}{turn} fill=\"{(text.Colour ?? Colour.Ink).ToHex()}\">{Escaped(text.Content)}</text>\n");
    }

    private static string PathOf(IReadOnlyList<Point> points, bool close)
    {
        var path = new StringBuilder();
        for (int i = 0; i < points.Count; i++)
        {
            path.Append(i == 0 ? 'M' : 'L').Append(Number(points[i].X)).Append(' ').Append(Number(points[i].Y));
        }

        return close ? path.Append('Z').ToString() : path.ToString();
    }

    private static string Paint(Style style, bool filled)
    {
        var paint = new StringBuilder();
        paint.Append(filled && style.Fill is Colour fill ? $" fill=\"{fill.ToHex()}\"" : " fill=\"none\"");
        if (style.Stroke is Colour stroke)
        {
            paint.Append(CultureInfo.InvariantCulture, $" stroke=\"{stroke.ToHex()}\" stroke-width=\"{Number(style.StrokeWidthMm)}\" stroke-linejoin=\"round\"");
            IReadOnlyList<double> lengths = DashPattern.LengthsMm(style.Dash);
            if (lengths.Count > 0)
            {
                paint.Append(CultureInfo.InvariantCulture, $" stroke-dasharray=\"{string.Join(' ', lengths.Select(Number))}\"");
            }
        }

        return style.Opacity < 1 ? paint.Append(CultureInfo.InvariantCulture, $" opacity=\"{Number(style.Opacity)}\"").ToString() : paint.ToString();
    }

    /// <summary>Width of hatch lines, mm, in both renderers.</summary>
    internal const double HatchWidthMm = 0.14;

    /// <summary>A number with at most three decimals, a point, and no minus before zero.</summary>
    internal static string Number(double value)
    {
        double rounded = Math.Round(value, 3, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.###", CultureInfo.InvariantCulture);
    }

    private static string Escaped(string text) => XmlText.Escaped(PrintableText.OneLine(text));
}
