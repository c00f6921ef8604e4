using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Drawings;
using PdfSharp.Drawing;

namespace Cavaxis.Reports.Pdf;

/// <summary>Writes a table over as many pages as it needs, its header again on each.</summary>
internal sealed class PdfTablePainter(PdfPageFlow flow, PdfTextPainter text)
{
    private const double CellPt = 8.3;
    private const double LineHeight = CellPt * 1.32;
    private const double PadX = 4;
    private const double PadY = 2.6;
    private const double ShortColumnShare = 0.25;

    private readonly XFont regular = PdfFonts.Of(CellPt, bold: false);
    private readonly XFont bold = PdfFonts.Of(CellPt, bold: true);

    /// <summary>Writes the table.</summary>
    internal void Paint(Table table)
    {
        double[] widths = Widths(table);
        IReadOnlyList<string>[] header = Wrap(table, [.. table.Columns.Select(c => c.Header)], widths, header: true);
        IReadOnlyList<string>[][] rows = [.. table.Rows.Select(r => Wrap(table, r, widths, header: false))];
        double first = rows.Length == 0 ? 0 : Math.Min(HeightOf(rows[0]), flow.FullHeight / 3);
        flow.Gap(6);
        flow.Need((2 * LineHeight) + HeightOf(header) + first);
        Head(table, header, widths, continued: false);
        foreach (IReadOnlyList<string>[] row in rows)
        {
            PaintRow(table, header, row, widths);
        }

        flow.Y += 8;
    }

    private void PaintRow(Table table, IReadOnlyList<string>[] header, IReadOnlyList<string>[] row, double[] widths)
    {
        int total = row.Max(c => c.Count);
        for (int from = 0; from < total;)
        {
            int fitting = (int)((flow.Room - (2 * PadY)) / LineHeight);
            bool tallerThanPage = HeightOf(row) > flow.FullHeight / 2;
            if (fitting < total - from && (!tallerThanPage || fitting < 3))
            {
                flow.NewPage();
                Head(table, header, widths, continued: true);
                fitting = Math.Max(1, (int)((flow.Room - (2 * PadY)) / LineHeight));
            }

            int take = Math.Min(total - from, fitting);
            Cells(table, row, widths, from, take, header: false);
            from += take;
        }
    }

    private void Head(Table table, IReadOnlyList<string>[] header, double[] widths, bool continued)
    {
        string caption = PrintableText.OneLine(table.Caption) + (continued ? " (continued)" : string.Empty);
        foreach (string line in text.Lines(caption, bold, flow.Width))
        {
            text.Line(line, bold, Colour.Ink, flow.Left);
        }

        flow.Y += 2;
        flow.Graphics.DrawRectangle(new XSolidBrush(PdfTone.Of(PdfTone.Panel)), flow.Left, flow.Y, flow.Width, HeightOf(header));
        Cells(table, header, widths, 0, header.Max(c => c.Count), header: true);
    }

    private void Cells(Table table, IReadOnlyList<string>[] row, double[] widths, int from, int take, bool header)
    {
        double left = flow.Left;
        var brush = new XSolidBrush(PdfTone.Of(Colour.Ink));
        for (int i = 0; i < row.Length; i++)
        {
            XFont font = header || (i == 0 && table.FirstColumnIsHeader) ? bold : regular;
            for (int k = from; k < Math.Min(row[i].Count, from + take); k++)
            {
                double baseLine = flow.Y + PadY + ((k - from) * LineHeight) + (CellPt * 0.95);
                (double x, XStringFormat format) = table.Columns[i].Align switch
                {
                    ColumnAlign.Right => (left + widths[i] - PadX, XStringFormats.BaseLineRight),
                    ColumnAlign.Centre => (left + (widths[i] / 2), XStringFormats.BaseLineCenter),
                    _ => (left + PadX, XStringFormats.BaseLineLeft),
                };
                if (row[i][k].Length > 0)
                {
                    flow.Graphics.DrawString(row[i][k], font, brush, new XPoint(x, baseLine), format);
                }
            }

            left += widths[i];
        }

        flow.Y += (take * LineHeight) + (2 * PadY);
        flow.Graphics.DrawLine(
            new XPen(PdfTone.Of(header ? Colour.Ink : Colour.Faint), header ? 0.9 : 0.5), flow.Left, flow.Y, flow.Left + flow.Width, flow.Y);
    }

    private IReadOnlyList<string>[] Wrap(Table table, IReadOnlyList<string> cells, double[] widths, bool header) =>
    [
        .. cells.Select((cell, i) => text.Lines(
            cell, header || (i == 0 && table.FirstColumnIsHeader) ? bold : regular, widths[i] - (2 * PadX))),
    ];

    private double[] Widths(Table table)
    {
        int n = table.Columns.Count;
        double weights = table.Columns.Sum(c => c.Weight);
        if (weights > 0)
        {
            return [.. table.Columns.Select(c => flow.Width * Math.Max(c.Weight, weights / n / 4)
                / table.Columns.Sum(d => Math.Max(d.Weight, weights / n / 4)))];
        }

        double[] narrow = new double[n];
        double[] wide = new double[n];
        for (int i = 0; i < n; i++)
        {
            foreach (string cell in table.Rows.Select(r => r[i]).Prepend(table.Columns[i].Header))
            {
                string words = PrintableText.Of(cell);
                narrow[i] = Math.Max(narrow[i], words.Split(' ', '\n').Max(Measured));
                wide[i] = Math.Max(wide[i], words.Split('\n').Max(Measured));
            }

            narrow[i] = Math.Min(narrow[i], flow.Width * 0.4) + (2 * PadX);
            wide[i] = Math.Max(narrow[i], Math.Min(wide[i], flow.Width) + (2 * PadX));
        }

        // Short columns keep their lines whole where there is room; the long ones give way.
        double[] whole = [.. narrow.Zip(wide, (a, b) => b <= flow.Width * ShortColumnShare ? b : a)];
        return Shared(whole.Sum() < flow.Width ? whole : narrow, wide, flow.Width);
    }

    /// <summary>Every column its longest word, and the rest by how much each would like.</summary>
    private static double[] Shared(double[] narrow, double[] wide, double width)
    {
        double least = narrow.Sum();
        double most = wide.Sum();
        return least >= width ? [.. narrow.Select(w => w * width / least)]
            : most <= width ? [.. wide.Select(w => w * width / most)]
            : [.. narrow.Zip(wide, (a, b) => a + ((b - a) * (width - least) / (most - least)))];
    }

    // Bold for all: headers and row names are bold, and a little too much room does no harm.
    private double Measured(string words) => flow.Graphics.MeasureString(words, bold).Width + 0.5;

    private static double HeightOf(IReadOnlyList<string>[] row) => (row.Max(c => c.Count) * LineHeight) + (2 * PadY);
}
