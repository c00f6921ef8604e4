using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Drawings;
using PdfSharp.Drawing;

namespace Cavaxis.Reports.Pdf;

/// <summary>Writes wrapped text, headings, lists and callouts into the flow.</summary>
internal sealed class PdfTextPainter(PdfPageFlow flow)
{
    /// <summary>Size of running text, points.</summary>
    internal const double BodyPt = 9.5;

    /// <summary>Height of a line against the size of its font.</summary>
    internal const double LineFactor = 1.38;

    private const double Indent = 14;
    private const double CalloutPad = 7;
    private const double CalloutEdge = 4;

    /// <summary>Lines of a text in a width.</summary>
    internal IReadOnlyList<string> Lines(string text, XFont font, double width) => LineBreaking.Wrapped(
        PrintableText.Of(text), l => flow.Graphics.MeasureString(l, font).Width <= width);

    /// <summary>Writes one line with its upper edge at the flow's place, and moves on.</summary>
    internal void Line(string line, XFont font, Colour tone, double left)
    {
        if (line.Length > 0)
        {
            flow.Graphics.DrawString(
                line, font, new XSolidBrush(PdfTone.Of(tone)), new XPoint(left, flow.Y + (font.Size * (LineFactor + 0.5) / 2)));
        }

        flow.Y += font.Size * LineFactor;
    }

    /// <summary>Writes a text, over pages where need be.</summary>
    internal void Flowing(string text, double sizePt, bool bold = false, Colour? tone = null, double indent = 0)
    {
        XFont font = PdfFonts.Of(sizePt, bold);
        IReadOnlyList<string> lines = Lines(text, font, flow.Width - indent);
        for (int i = 0; i < lines.Count; i++)
        {
            // No lone first line at the foot of a page.
            flow.Need(sizePt * LineFactor * (i == 0 && lines.Count > 1 ? 2 : 1));
            Line(lines[i], font, tone ?? Colour.Ink, flow.Left + indent);
        }
    }

    /// <summary>Writes a heading and its bookmark.</summary>
    /// <param name="heading">The heading.</param>
    /// <param name="roomAfter">Room that what follows needs on the same page.</param>
    internal void Heading(Heading heading, double roomAfter)
    {
        double size = heading.Level switch { 2 => 14, 3 => 11.5, _ => 10 };
        flow.Gap(heading.Level == 2 ? 14 : 9);
        XFont font = PdfFonts.Of(size, bold: true);
        double height = (Lines(heading.Text, font, flow.Width).Count * size * LineFactor) + 5;
        flow.Need(Math.Min(height + roomAfter, flow.FullHeight));
        string mark = PrintableText.OneLine(heading.Text);
        flow.Page.Owner.Outlines.Add(mark.Length == 0 ? "(no words)" : mark, flow.Page, true);
        Flowing(heading.Text, size, bold: true);
        if (heading.Level == 2)
        {
            flow.Graphics.DrawLine(
                new XPen(PdfTone.Of(Colour.Faint), 0.7), flow.Left, flow.Y + 1, flow.Left + flow.Width, flow.Y + 1);
        }

        flow.Y += heading.Level == 2 ? 5 : 2;
    }

    /// <summary>Writes a list.</summary>
    internal void List(BulletList list)
    {
        XFont font = PdfFonts.Of(BodyPt, bold: false);
        double indent = list.Numbered ? Indent + 6 : Indent;
        for (int i = 0; i < list.Items.Count; i++)
        {
            IReadOnlyList<string> lines = Lines(list.Items[i], font, flow.Width - indent);
            flow.Need(BodyPt * LineFactor * Math.Min(2, lines.Count));
            double y = flow.Y;
            Line(list.Numbered ? $"{i + 1}." : "•", font, Colour.Muted, flow.Left + 3);
            flow.Y = y;
            foreach (string line in lines)
            {
                flow.Need(BodyPt * LineFactor);
                Line(line, font, Colour.Ink, flow.Left + indent);
            }

            flow.Y += 2;
        }
    }

    /// <summary>Writes a callout: sign and word, title, text, on a panel with a coloured edge.</summary>
    internal void Callout(Callout callout)
    {
        XFont bold = PdfFonts.Of(BodyPt, bold: true);
        XFont regular = PdfFonts.Of(BodyPt, bold: false);
        double width = flow.Width - CalloutEdge - (2 * CalloutPad);
        string head = $"{CalloutWords.Sign(callout.Kind)} {CalloutWords.Word(callout.Kind)}   {callout.Title}";
        Colour tone = CalloutWords.Tone(callout.Kind);
        List<(string Words, XFont Font, Colour Tone)> lines =
        [
            .. Lines(head, bold, width).Select(l => (l, bold, tone)),
            .. callout.Text.Length == 0 ? [] : Lines(callout.Text, regular, width).Select(l => (l, regular, Colour.Ink)),
        ];
        Panel(lines, tone);
    }

    /// <summary>Lines on a panel; a panel taller than the page goes on over the next.</summary>
    internal void Panel(List<(string Words, XFont Font, Colour Tone)> lines, Colour tone)
    {
        const double lineHeight = BodyPt * LineFactor;
        double height = (lines.Count * lineHeight) + (2 * CalloutPad);
        flow.Need(Math.Min(height, flow.FullHeight));
        for (int from = 0; from < lines.Count;)
        {
            int take = Math.Min(lines.Count - from, (int)((flow.Room - (2 * CalloutPad)) / lineHeight));
            double panel = (take * lineHeight) + (2 * CalloutPad);
            flow.Graphics.DrawRectangle(new XSolidBrush(PdfTone.Of(PdfTone.Panel)), flow.Left, flow.Y, flow.Width, panel);
            flow.Graphics.DrawRectangle(new XSolidBrush(PdfTone.Of(tone)), flow.Left, flow.Y, CalloutEdge, panel);
            flow.Y += CalloutPad;
            foreach ((string words, XFont font, Colour lineTone) in lines.GetRange(from, take))
            {
                Line(words, font, lineTone, flow.Left + CalloutEdge + CalloutPad);
            }

            flow.Y += CalloutPad;
            from += take;
            if (from < lines.Count)
            {
                flow.NewPage();
            }
        }
    }
}
