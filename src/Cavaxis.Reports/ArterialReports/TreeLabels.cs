using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.ArterialReports;

/// <summary>Sets labels into the two margins so that none overlaps, with a leader to its place.</summary>
internal static class TreeLabels
{
    private const double NamePt = 8;
    private const double WordsPt = 7.5;
    private const double LineMm = 3.4;
    private const double GapMm = 2;
    private const double EdgeMm = 3;

    /// <summary>Paints the labels.</summary>
    /// <param name="labels">In any order.</param>
    /// <returns>Items.</returns>
    internal static IEnumerable<DrawingItem> Paint(IReadOnlyList<TreeLabel> labels) =>
        Side([.. labels.Where(static l => l.OnLeft)], left: true).Concat(Side([.. labels.Where(static l => !l.OnLeft)], left: false));

    private static IEnumerable<DrawingItem> Side(TreeLabel[] labels, bool left)
    {
        List<(string Words, bool Bold)>[] lines = [.. labels.Select(static l => Wrapped(l))];
        double[] middles = LabelStack.Place(
            [.. labels.Select(static l => l.At.Y)], [.. lines.Select(static l => (l.Count * LineMm) + GapMm)], ArterialPaper.TopMm - 3, ArterialPaper.BottomMm + 2);
        double inner = left ? ArterialPaper.MarginMm : ArterialPaper.WidthMm - ArterialPaper.MarginMm;
        double text = left ? EdgeMm : inner + 1.5;
        for (int i = 0; i < labels.Length; i++)
        {
            TreeLabel label = labels[i];
            double edge = inner + (left ? 0.5 : -0.5);
            yield return new Polyline([label.At, new Point(edge + (left ? 4 : -4), middles[i]), new Point(edge, middles[i])], Style.Line(label.Tone, 0.18, Dash.Dotted));
            yield return new Circle(label.At, 0.7, Style.Area(label.Tone));
            double line = middles[i] - ((lines[i].Count - 1) * LineMm / 2) + 1;
            foreach ((string words, bool bold) in lines[i])
            {
                yield return new Text(new Point(text, line), words, bold ? NamePt : WordsPt, Colour: bold ? label.Tone : Colour.Ink, Bold: bold);
                line += LineMm;
            }
        }
    }

    private static List<(string Words, bool Bold)> Wrapped(TreeLabel label) =>
    [
        .. label.Lines.SelectMany(static (line, i) => TextMetrics
            .Wrapped(PrintableText.OneLine(line), ArterialPaper.MarginMm - EdgeMm - 1.5, i == 0 ? NamePt : WordsPt, i == 0)
            .Select(words => (words, i == 0))),
    ];
}
