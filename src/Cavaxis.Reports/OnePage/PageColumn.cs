using System.Globalization;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.OnePage;

/// <summary>Measures and paints sections one under the other in a column of a given width, in one size of font.</summary>
/// <param name="width">Width of the column, mm.</param>
/// <param name="pt">Size of the font, points.</param>
/// <param name="mostLines">Lines that a text may take before it is cut.</param>
internal sealed class PageColumn(double width, double pt, int mostLines)
{
    private const double SectionGap = 1.7;
    private const double CellGap = 1.6;
    private readonly Dictionary<(PageSection Section, int Row), IReadOnlyList<string>[]> wrapped = [];

    private double LineMm => pt * TextMetrics.MmPerPoint * 1.24;

    private double TitleMm => LineMm + 1.5;

    /// <summary>Height of a section.</summary>
    /// <param name="section">The section.</param>
    /// <param name="shown">How many of its rows stand.</param>
    /// <returns>Height with the gap after it, mm.</returns>
    public double Height(PageSection section, int shown)
    {
        double height = TitleMm + (section.Heads.Count > 0 ? LineMm : 0) + SectionGap;
        for (int row = 0; row < shown; row++)
        {
            height += RowMm(section, row);
        }

        return height + (More(section, shown) is null ? 0 : LineMm);
    }

    /// <summary>Paints a section.</summary>
    /// <param name="section">The section.</param>
    /// <param name="shown">How many of its rows stand.</param>
    /// <param name="left">Left edge, mm.</param>
    /// <param name="top">Upper edge, mm.</param>
    /// <param name="items">Takes the items.</param>
    public void Paint(PageSection section, int shown, double left, double top, List<DrawingItem> items)
    {
        items.Add(new Text(new(left, top + (0.8 * LineMm)), PageText.Cut(section.Title, width, pt + 0.6, true), pt + 0.6, Bold: true));
        items.Add(new Line(new(left, top + LineMm + 0.4), new(left + width, top + LineMm + 0.4), Style.Line(Colour.Muted, 0.2)));
        double y = top + TitleMm;
        if (section.Heads.Count > 0)
        {
            Cells([.. section.Heads.Select((h, i) => (IReadOnlyList<string>)[PageText.Cut(h, Room(section, i), pt - 0.6, false)])], section, left, y, pt - 0.6, false, Colour.Muted, items);
            y += LineMm;
        }

        for (int row = 0; row < shown; row++)
        {
            bool grave = section.Rows[row].Grave;
            Cells(Lines(section, row), section, left, y, pt, grave, grave ? Colour.Refused : Colour.Ink, items);
            y += RowMm(section, row);
        }

        if (More(section, shown) is string more)
        {
            items.Add(new Text(new(left, y + (0.78 * LineMm)), PageText.Cut(more, width, pt, true), pt, Bold: true, Colour: Colour.Muted));
        }
    }

    /// <summary>What is said of rows that do not stand here.</summary>
    /// <param name="section">The section.</param>
    /// <param name="shown">How many of its rows stand.</param>
    /// <returns>The words; null where every row stands.</returns>
    public static string? More(PageSection section, int shown)
    {
        int hidden = section.Rows.Count - shown + section.Besides;
        return hidden == 0 ? null : string.Create(CultureInfo.InvariantCulture, $"+ {hidden} more in {section.Elsewhere}");
    }

    private double RowMm(PageSection section, int row) => (Lines(section, row).Max(static c => c.Count) * LineMm) + 0.35;

    private double Room(PageSection section, int column) => (width * section.Shares[column] / section.Shares.Sum()) - (section.Shares.Count > 1 && column < section.Shares.Count - 1 ? CellGap : 0);

    private IReadOnlyList<string>[] Lines(PageSection section, int row)
    {
        if (!wrapped.TryGetValue((section, row), out IReadOnlyList<string>[]? lines))
        {
            PageRow of = section.Rows[row];
            lines = [.. of.Cells.Select((cell, i) => PageText.Lines(i == 0 && of.Grave ? "▲ " + cell : cell, Room(section, i), pt, of.Grave, mostLines))];
            wrapped[(section, row)] = lines;
        }

        return lines;
    }

    private void Cells(IReadOnlyList<string>[] cells, PageSection section, double left, double top, double size, bool bold, Colour tone, List<DrawingItem> items)
    {
        double x = left;
        for (int i = 0; i < cells.Length; i++)
        {
            for (int line = 0; line < cells[i].Count; line++)
            {
                if (cells[i][line].Length > 0)
                {
                    items.Add(new Text(new(x, top + (line * LineMm) + (0.78 * LineMm)), cells[i][line], size, Bold: bold, Colour: tone));
                }
            }

            x += width * section.Shares[i] / section.Shares.Sum();
        }
    }
}
