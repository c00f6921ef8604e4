using System.Globalization;
using System.Text;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Html;

/// <summary>
/// Writes a report as one self-contained HTML page: no link, script, font file or picture from elsewhere. Every text is
/// escaped; the same report gives the same page.
/// </summary>
public static class HtmlWriter
{
    /// <summary>The report as a page.</summary>
    /// <param name="report">The report.</param>
    /// <returns>The whole page, UTF-8 declared.</returns>
    public static string Write(ReportDocument report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var html = new StringBuilder();
        html.Append(CultureInfo.InvariantCulture, $"<!DOCTYPE html>\n<html lang=\"{Flat(report.Language)}\">\n<head>\n<meta charset=\"utf-8\">\n");
        html.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<meta name=\"color-scheme\" content=\"light dark\">\n");

        // The page may show what people typed; should an escape ever fail, this still lets nothing run or load.
        html.Append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'\">\n");
        html.Append(CultureInfo.InvariantCulture, $"<title>{Flat(report.Title)}</title>\n<style>\n{(report.OnePage is null ? HtmlStyle.Sheet(report.CautionText) : HtmlStyle.OnePage)}</style>\n</head>\n<body>\n");
        html.Append(CultureInfo.InvariantCulture, $"<aside class=\"banner\" role=\"note\" aria-label=\"Caution\"><strong>Caution.</strong> {Text(report.CautionText)}</aside>\n");
        html.Append(CultureInfo.InvariantCulture, $"<main>\n<header>\n<h1>{Text(report.Title)}</h1>\n");
        if (report.Subtitle.Length > 0)
        {
            html.Append(CultureInfo.InvariantCulture, $"<p class=\"subtitle\">{Text(report.Subtitle)}</p>\n");
        }

        html.Append("</header>\n");
        int figures = 0;
        foreach (ReportBlock block in report.Blocks)
        {
            Append(html, block, ref figures);
        }

        html.Append(CultureInfo.InvariantCulture, $"</main>\n<footer><p>{Text(report.CautionText)}</p></footer>\n");
        if (report.OnePage is Drawing page)
        {
            html.Append(CultureInfo.InvariantCulture, $"<div class=\"paper\" aria-hidden=\"true\">\n{SvgWriter.Write(page, "paper")}</div>\n");
        }

        html.Append("</body>\n</html>\n");
        return html.ToString();
    }

    private static void Append(StringBuilder html, ReportBlock block, ref int figures)
    {
        switch (block)
        {
            case Heading heading:
                html.Append(CultureInfo.InvariantCulture, $"<h{heading.Level}>{Text(heading.Text)}</h{heading.Level}>\n");
                break;
            case Paragraph paragraph:
                html.Append(CultureInfo.InvariantCulture, $"<p>{Text(paragraph.Text)}</p>\n");
                break;
            case Callout callout:
                AppendCallout(html, callout);
                break;
            case BulletList list:
                string tag = list.Numbered ? "ol" : "ul";
                html.Append(CultureInfo.InvariantCulture, $"<{tag}>\n{string.Concat(list.Items.Select(i => $"<li>{Text(i)}</li>\n"))}</{tag}>\n");
                break;
            case Table table:
                AppendTable(html, table);
                break;
            case Figure figure:
                figures++;
                AppendFigure(html, figure, figures);
                break;
            case PageBreak:
                html.Append("<div class=\"page-break\"></div>\n");
                break;
        }
    }

    private static void AppendCallout(StringBuilder html, Callout callout)
    {
        string kind = CalloutWords.Word(callout.Kind);
        html.Append(CultureInfo.InvariantCulture, $"<section class=\"callout {HtmlStyle.ClassOf(callout.Kind)}\" aria-label=\"{Flat($"{kind}: {callout.Title}")}\">\n");
        html.Append(CultureInfo.InvariantCulture, $"<p class=\"callout-title\"><span class=\"sign\"><span aria-hidden=\"true\">{CalloutWords.Sign(callout.Kind)}</span> {kind}</span> {Text(callout.Title)}</p>\n");
        if (callout.Text.Length > 0)
        {
            html.Append(CultureInfo.InvariantCulture, $"<p>{Text(callout.Text)}</p>\n");
        }

        html.Append("</section>\n");
    }

    private static void AppendTable(StringBuilder html, Table table)
    {
        // A wide table scrolls in its own region, which the keyboard can reach, instead of widening the page.
        html.Append(CultureInfo.InvariantCulture, $"<div class=\"table\" role=\"region\" tabindex=\"0\" aria-label=\"{Flat(table.Caption)}\">\n<table>\n<caption>{Text(table.Caption)}</caption>\n<thead>\n<tr>");
        foreach (TableColumn column in table.Columns)
        {
            html.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\"{ClassFor(column)}>{Text(column.Header)}</th>");
        }

        html.Append("</tr>\n</thead>\n<tbody>\n");
        foreach (IReadOnlyList<string> row in table.Rows)
        {
            html.Append("<tr>");
            for (int i = 0; i < row.Count; i++)
            {
                bool header = i == 0 && table.FirstColumnIsHeader;
                html.Append(header ? "<th scope=\"row\"" : "<td").Append(ClassFor(table.Columns[i])).Append('>')
                    .Append(Text(row[i])).Append(header ? "</th>" : "</td>");
            }

            html.Append("</tr>\n");
        }

        html.Append("</tbody>\n</table>\n</div>\n");
    }

    private static void AppendFigure(StringBuilder html, Figure figure, int number)
    {
        Drawing d = figure.Drawing;
        string svg = SvgWriter.Write(
            new Drawing(d.WidthMm, d.HeightMm, d.Title, figure.AltText, d.Items),
            string.Create(CultureInfo.InvariantCulture, $"figure-{number}"));
        html.Append(CultureInfo.InvariantCulture, $"<figure>\n{svg}<figcaption>Figure {number}. {Text(figure.Caption)}</figcaption>\n</figure>\n");
    }

    private static string ClassFor(TableColumn column) => column.Align switch
    {
        ColumnAlign.Right => " class=\"right\"",
        ColumnAlign.Centre => " class=\"centre\"",
        _ => string.Empty,
    };

    /// <summary>Text for attributes and the title, which hold no elements.</summary>
    private static string Flat(string text) => XmlText.Escaped(PrintableText.OneLine(text));

    private static string Text(string text) => XmlText.Escaped(PrintableText.Of(text)).Replace("\n", "<br>", StringComparison.Ordinal);
}
