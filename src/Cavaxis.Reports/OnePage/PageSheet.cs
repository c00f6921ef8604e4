using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.OnePage;

/// <summary>
/// One A4 page that holds whatever there is: sections in two columns, small trends beneath. Where room runs out the font becomes a little smaller, then rows
/// give way from the end of the longest sections; each section says how many are left out and where they are.
/// </summary>
/// <param name="Title">What the page is and of whom.</param>
/// <param name="Subtitle">A line or two under it.</param>
/// <param name="CautionText">What the reader must bear in mind.</param>
/// <param name="Foot">One line at the foot.</param>
/// <param name="Sections">Sections in the order of reading.</param>
/// <param name="TrendTitle">Heading of the trends.</param>
/// <param name="Trends">Small trends; at most <see cref="MostTrends"/> are drawn.</param>
public sealed record PageSheet(
    string Title, string Subtitle, string CautionText, string Foot, IReadOnlyList<PageSection> Sections, string TrendTitle, IReadOnlyList<SmallTrend> Trends)
{
    /// <summary>Trends for which there is room.</summary>
    public const int MostTrends = 8;

    private const double WidthMm = 210;
    private const double HeightMm = 297;
    private const double Margin = 11;
    private const double Gutter = 5;
    private const double TrendsAcross = 4;
    // Tried in turn: the font becomes smaller first, then long texts are cut sooner.
    private static readonly (double Pt, int MostLines)[] Sizes = [(8, 9), (7.6, 9), (7.2, 9), (6.8, 9), (6.4, 9), (6.4, 4)];

    private static double Inner => WidthMm - (2 * Margin);

    private static double ColumnMm => (Inner - Gutter) / 2;

    /// <summary>Draws the page.</summary>
    /// <returns>An A4 drawing.</returns>
    public Drawing Draw()
    {
        List<DrawingItem> items = [];
        double top = Head(items);
        double trends = HeightMm - Margin - 4 - TrendMm;
        Columns(items, top, trends - top);
        PaintTrends(items, trends);
        items.Add(new Line(new(Margin, HeightMm - Margin - 2.6), new(WidthMm - Margin, HeightMm - Margin - 2.6), Style.Line(Colour.Muted, 0.2)));
        items.Add(new Text(new(Margin, HeightMm - Margin), PageText.Cut(Foot, Inner, 6, false), 6, Colour: Colour.Muted));
        return new Drawing(WidthMm, HeightMm, Title, $"{Title}. {Subtitle}", items);
    }

    private double TrendMm => Trends.Count == 0 ? 0 : 6 + (Math.Ceiling(Math.Min(Trends.Count, MostTrends) / TrendsAcross) * (SmallTrend.HeightMm + 1));

    private double Head(List<DrawingItem> items)
    {
        double y = Margin + 3.6;
        items.Add(new Text(new(Margin, y), PageText.Cut(Title, Inner, 13, true), 13, Bold: true));
        y += 1.6;
        foreach (string line in PageText.Lines(Subtitle, Inner, 8, false, 2))
        {
            y += 3.5;
            items.Add(new Text(new(Margin, y), line, 8, Colour: Colour.Muted));
        }

        y += 2;
        IReadOnlyList<string> caution = PageText.Lines("CAUTION  " + CautionText, Inner - 6, 6.8, false, 4);
        double height = (caution.Count * 3) + 2;
        items.Add(new Rectangle(new Box(Margin, y, WidthMm - Margin, y + height), Style.Area(new Colour(0xF3, 0xF6, 0xFA))));
        items.Add(new Rectangle(new Box(Margin, y, Margin + 1.4, y + height), Style.Area(new Colour(0x7A, 0x5C, 0x00))));
        for (int i = 0; i < caution.Count; i++)
        {
            items.Add(new Text(new(Margin + 3.5, y + 3.4 + (i * 3)), caution[i], 6.8));
        }

        return y + height + 3;
    }

    private void Columns(List<DrawingItem> items, double top, double room)
    {
        PageColumn column = null!;
        int[] shown = [];
        int split = 0;
        foreach ((double size, int lines) in Sizes)
        {
            column = new PageColumn(ColumnMm, size, lines);
            shown = [.. Sections.Select(static s => s.Rows.Count)];
            (split, double tallest) = Split(column, shown);
            if (tallest <= room)
            {
                break;
            }
        }

        // At the smallest size rows give way one by one, always the one that leaves the longest section a row shorter.
        while (true)
        {
            (split, double tallest) = Split(column, shown);
            if (tallest <= room || Shorten(column, shown, split) is not int next)
            {
                break;
            }

            shown[next]--;
        }

        double left = Margin;
        double y = top;
        for (int i = 0; i < Sections.Count; i++)
        {
            if (i == split)
            {
                (left, y) = (Margin + ColumnMm + Gutter, top);
            }

            column.Paint(Sections[i], shown[i], left, y, items);
            y += column.Height(Sections[i], shown[i]);
        }
    }

    /// <summary>The first section of the right column, so that the taller column is as short as can be.</summary>
    private (int Split, double TallestMm) Split(PageColumn column, int[] shown)
    {
        double[] heights = [.. Sections.Select((s, i) => column.Height(s, shown[i]))];
        double all = heights.Sum();
        double left = 0;
        (int Split, double TallestMm) best = (0, all);
        for (int i = 0; i < heights.Length; i++)
        {
            left += heights[i];
            double tallest = Math.Max(left, all - left);
            if (tallest < best.TallestMm)
            {
                best = (i + 1, tallest);
            }
        }

        return best;
    }

    private int? Shorten(PageColumn column, int[] shown, int split)
    {
        double Mm(int i) => column.Height(Sections[i], shown[i]);
        int[] left = [.. Enumerable.Range(0, split)];
        int[] right = [.. Enumerable.Range(split, Sections.Count - split)];
        int[] taller = left.Sum(Mm) >= right.Sum(Mm) ? left : right;
        int[] able = [.. taller.Where(i => shown[i] > Sections[i].Least)];
        if (able.Length == 0)
        {
            able = [.. Enumerable.Range(0, shown.Length).Where(i => shown[i] > Math.Min(1, Sections[i].Least))];
        }

        return able.Length == 0 ? null : able.MaxBy(Mm);
    }

    private void PaintTrends(List<DrawingItem> items, double top)
    {
        if (Trends.Count == 0)
        {
            return;
        }

        int more = Math.Max(0, Trends.Count - MostTrends);
        string title = more == 0 ? TrendTitle : $"{TrendTitle}; + {more} more in the full report";
        items.Add(new Text(new(Margin, top + 2.6), PageText.Cut(title, Inner, 8, true), 8, Bold: true));
        items.Add(new Line(new(Margin, top + 3.8), new(WidthMm - Margin, top + 3.8), Style.Line(Colour.Muted, 0.2)));
        double width = (Inner - ((TrendsAcross - 1) * 4)) / TrendsAcross;
        for (int i = 0; i < Math.Min(Trends.Count, MostTrends); i++)
        {
            items.AddRange(Trends[i].Paint(Margin + (i % (int)TrendsAcross * (width + 4)), top + 5 + (i / (int)TrendsAcross * (SmallTrend.HeightMm + 1)), width));
        }
    }
}
