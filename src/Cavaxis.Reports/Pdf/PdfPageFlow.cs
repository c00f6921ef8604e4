using Cavaxis.Reports.Drawings;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Cavaxis.Reports.Pdf;

/// <summary>A4 pages filled from top to bottom. Lengths in points.</summary>
internal sealed class PdfPageFlow : IDisposable
{
    /// <summary>Points in a millimetre.</summary>
    internal const double Mm = 72 / 25.4;

    private const double SideMargin = 18 * Mm;
    private const double TopMargin = 15 * Mm;
    private const double FooterPt = 7;
    private const double FooterLine = 9;
    private const double FooterShare = 0.82;

    private readonly PdfDocument document;
    private readonly IReadOnlyList<string> footer;

    /// <summary>Starts the first page.</summary>
    /// <param name="document">The document.</param>
    /// <param name="cautionText">Printed at the foot of every page.</param>
    internal PdfPageFlow(PdfDocument document, string cautionText)
    {
        this.document = document;
        Graphics = StartPage();
        XFont font = PdfFonts.Of(FooterPt, bold: false);
        footer = LineBreaking.Wrapped(
            PrintableText.OneLine(cautionText), l => Graphics.MeasureString(l, font).Width <= Width * FooterShare);
        Bottom = PageHeight - (12 * Mm) - (footer.Count * FooterLine) - 8;
    }

    /// <summary>The page being filled.</summary>
    internal XGraphics Graphics { get; private set; }

    /// <summary>Where the next part starts, from the upper edge.</summary>
    internal double Y { get; set; } = TopMargin;

    /// <summary>Left edge of the text.</summary>
    internal double Left { get; } = SideMargin;

    /// <summary>Width of the text.</summary>
    internal double Width { get; private set; }

    /// <summary>Lower edge of the text.</summary>
    internal double Bottom { get; }

    /// <summary>Height of an empty page's text.</summary>
    internal double FullHeight => Bottom - TopMargin;

    /// <summary>Room left on this page.</summary>
    internal double Room => Bottom - Y;

    /// <summary>The page being filled.</summary>
    internal PdfPage Page => document.Pages[document.PageCount - 1];

    private double PageHeight { get; set; }

    /// <summary>Goes to a new page unless so much room is left or the page is still empty.</summary>
    /// <param name="height">Room needed.</param>
    internal void Need(double height)
    {
        if (height > Room && Y > TopMargin)
        {
            NewPage();
        }
    }

    /// <summary>Leaves a gap, none at the top of a page.</summary>
    /// <param name="height">Height of the gap.</param>
    internal void Gap(double height)
    {
        if (Y > TopMargin)
        {
            Y += height;
        }
    }

    /// <summary>Goes to a new page.</summary>
    internal void NewPage()
    {
        Graphics.Dispose();
        Graphics = StartPage();
        Y = TopMargin;
    }

    /// <summary>Writes caution text and page number at the foot of every page; the last act.</summary>
    internal void Finish()
    {
        Graphics.Dispose();
        XFont font = PdfFonts.Of(FooterPt, bold: false);
        var brush = new XSolidBrush(PdfTone.Of(Colour.Muted));
        for (int i = 0; i < document.PageCount; i++)
        {
            using XGraphics page = XGraphics.FromPdfPage(document.Pages[i], XGraphicsPdfPageOptions.Append);
            double y = Bottom + 8;
            page.DrawLine(new XPen(PdfTone.Of(Colour.Muted), 0.5), Left, y, Left + Width, y);
            y += FooterLine + 1;
            page.DrawString($"page {i + 1} of {document.PageCount}", font, brush, new XPoint(Left + Width, y), XStringFormats.BaseLineRight);
            foreach (string line in footer)
            {
                page.DrawString(line, font, brush, new XPoint(Left, y));
                y += FooterLine;
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose() => Graphics.Dispose();

    private XGraphics StartPage()
    {
        PdfPage page = document.AddPage();

        // The library's own A4 is rounded to whole points, which would shrink true-size drawings by half a thousandth.
        page.Width = XUnit.FromMillimeter(210);
        page.Height = XUnit.FromMillimeter(297);
        PageHeight = page.Height.Point;
        Width = page.Width.Point - (2 * SideMargin);
        return XGraphics.FromPdfPage(page);
    }
}
