using System.Globalization;
using Cavaxis.Quantities.Faults;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Drawings;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Cavaxis.Reports.Pdf;

/// <summary>Writes a report as a PDF on A4 with embedded fonts; the same report and time stamp give the same bytes.</summary>
public static class PdfWriter
{
    private const double FigureCaptionPt = 8.3;
    private const double TrueSize = 0.9995;

    /// <summary>The report as a PDF.</summary>
    /// <param name="report">The report.</param>
    /// <param name="stamp">Time written into the document as its making; given, so that the bytes can be made again.</param>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="InputFaultException">The fonts are not on this machine (<see cref="FaultCode.NotFound"/>).</exception>
    public static byte[] Write(ReportDocument report, DateTimeOffset stamp)
    {
        ArgumentNullException.ThrowIfNull(report);
        DejaVuFonts.Install();
        using var document = new PdfDocument();
        document.Info.Title = PrintableText.OneLine(report.Title);
        document.Info.Subject = PrintableText.OneLine(report.Subtitle);
        document.Info.Creator = "Cavaxis";
        document.Info.CreationDate = stamp.UtcDateTime;
        document.Language = PrintableText.OneLine(report.Language);
        document.ViewerPreferences.DisplayDocTitle = true;
        if (report.OnePage is Drawing page)
        {
            PaintPage(document, page);
        }
        else
        {
            PaintFlow(document, report);
        }

        using var bytes = new MemoryStream();
        document.Save(bytes, closeStream: false);
        return PdfFixedBytes.Of(bytes.ToArray());
    }

    private static void PaintPage(PdfDocument document, Drawing drawing)
    {
        PdfPage page = document.AddPage();
        page.Width = XUnit.FromMillimeter(drawing.WidthMm);
        page.Height = XUnit.FromMillimeter(drawing.HeightMm);
        using XGraphics graphics = XGraphics.FromPdfPage(page);
        new PdfDrawingPainter(graphics, 0, 0, 1).Paint(drawing);
    }

    private static void PaintFlow(PdfDocument document, ReportDocument report)
    {
        using var flow = new PdfPageFlow(document, report.CautionText);
        var text = new PdfTextPainter(flow);
        text.Callout(new Callout(CalloutKind.Caution, "Bear in mind", report.CautionText));
        flow.Y += 10;
        text.Flowing(report.Title, 19, bold: true);
        if (report.Subtitle.Length > 0)
        {
            text.Flowing(report.Subtitle, 10.5, tone: Colour.Muted);
        }

        flow.Y += 4;
        int figures = 0;
        for (int i = 0; i < report.Blocks.Count; i++)
        {
            Paint(report, i, flow, text, ref figures);
        }

        flow.Finish();
    }

    private static void Paint(ReportDocument report, int index, PdfPageFlow flow, PdfTextPainter text, ref int figures)
    {
        switch (report.Blocks[index])
        {
            case Heading heading:
                text.Heading(heading, index + 1 < report.Blocks.Count ? RoomFor(report.Blocks[index + 1], flow) : 0);
                break;
            case Paragraph paragraph:
                text.Flowing(paragraph.Text, PdfTextPainter.BodyPt);
                flow.Y += 5;
                break;
            case Callout callout:
                flow.Gap(3);
                text.Callout(callout);
                flow.Y += 6;
                break;
            case BulletList list:
                text.List(list);
                flow.Y += 4;
                break;
            case Table table:
                new PdfTablePainter(flow, text).Paint(table);
                break;
            case Figure figure:
                figures++;
                PaintFigure(figure, figures, flow, text);
                break;
            case PageBreak:
                flow.NewPage();
                break;
        }
    }

    private static void PaintFigure(Figure figure, int number, PdfPageFlow flow, PdfTextPainter text)
    {
        string caption = $"Figure {number}. {figure.Caption}";
        double captionHeight = 6 + (text.Lines(caption, PdfFonts.Of(FigureCaptionPt, bold: false), flow.Width).Count
            * FigureCaptionPt * PdfTextPainter.LineFactor);
        double shrink = Shrink(figure, flow, captionHeight);
        if (shrink < TrueSize)
        {
            // A drawing may print its own scale; the reader must know when that no longer holds. Two more lines of caption.
            captionHeight += FigureCaptionPt * PdfTextPainter.LineFactor * 2;
            shrink = Shrink(figure, flow, captionHeight);
            caption = string.Create(
                CultureInfo.InvariantCulture,
                $"{caption} (Printed at {shrink * 100:0} % of its size to fit the page: a scale in the drawing does not hold.)");
        }

        double height = figure.Drawing.HeightMm * PdfPageFlow.Mm * shrink;
        flow.Gap(5);
        flow.Need(height + captionHeight);
        new PdfDrawingPainter(flow.Graphics, flow.Left, flow.Y, shrink).Paint(figure.Drawing);
        flow.Y += height + 4;
        text.Flowing(caption, FigureCaptionPt, tone: Colour.Muted);
        flow.Y += 6;
    }

    private static double Shrink(Figure figure, PdfPageFlow flow, double captionHeight) => Math.Min(1, Math.Min(
        flow.Width / (figure.Drawing.WidthMm * PdfPageFlow.Mm),
        (flow.FullHeight - captionHeight - 1) / (figure.Drawing.HeightMm * PdfPageFlow.Mm)));

    private static double RoomFor(ReportBlock block, PdfPageFlow flow) => block switch
    {
        Figure figure => (figure.Drawing.HeightMm * PdfPageFlow.Mm * Shrink(figure, flow, 40)) + 40,
        Table => 90,
        Callout => 60,
        Heading => 50,
        _ => 30,
    };
}
