using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Charts;

/// <summary>A label in the column on the right of a chart, waiting for its place.</summary>
/// <param name="Words">Its words.</param>
/// <param name="From">What it belongs to; the leader line starts here.</param>
/// <param name="Tone">Colour of words and leader.</param>
/// <param name="Key">Draws the sample of line, band or sign at the label's left; given the middle of the sample.</param>
internal sealed record EndLabel(string Words, Point From, Colour Tone, Func<Point, IEnumerable<DrawingItem>> Key)
{
    /// <summary>Size of the words, points.</summary>
    internal const double SizePt = 7.5;

    private const double LineMm = 3.1;
    private const double KeyMm = 7;
    private const double LeaderMm = 5;

    /// <summary>Draws labels in a column, none over another.</summary>
    /// <param name="labels">The labels.</param>
    /// <param name="column">The column; its left edge is the right edge of the plot.</param>
    /// <returns>Leaders, samples and words.</returns>
    internal static IEnumerable<DrawingItem> Stack(IReadOnlyList<EndLabel> labels, Box column)
    {
        double wordsLeft = column.Left + LeaderMm + KeyMm + 1;
        IReadOnlyList<string>[] lines =
            [.. labels.Select(l => TextMetrics.Wrapped(PrintableText.OneLine(l.Words), column.Right - wordsLeft, SizePt))];
        double[] sizes = [.. lines.Select(l => (l.Count * LineMm) + 1.2)];
        double[] middles = LabelStack.Place([.. labels.Select(l => l.From.Y)], sizes, column.Top, column.Bottom);
        for (int i = 0; i < labels.Count; i++)
        {
            EndLabel label = labels[i];
            double y = middles[i];
            yield return new Polyline(
                [label.From, new(Math.Max(label.From.X, column.Left + 0.5), label.From.Y), new(column.Left + LeaderMm - 0.8, y)],
                Style.Line(label.Tone, 0.15));
            foreach (DrawingItem item in label.Key(new Point(column.Left + LeaderMm + (KeyMm / 2), y)))
            {
                yield return item;
            }

            double baseLine = y - ((lines[i].Count - 1) * LineMm / 2) + 0.95;
            foreach (string line in lines[i])
            {
                yield return new Text(new Point(wordsLeft, baseLine), line, SizePt, Colour: label.Tone);
                baseLine += LineMm;
            }
        }
    }
}
