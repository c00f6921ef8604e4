using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Charts;

/// <summary>Words of upright thresholds: one row each above the plot, so that they cannot meet.</summary>
internal static class UprightThresholdRows
{
    /// <summary>Height of a row, mm.</summary>
    internal const double RowMm = 4;

    /// <summary>Lines, signs and words.</summary>
    /// <param name="thresholds">The upright thresholds.</param>
    /// <param name="frame">The plot, with a row for each kept free above.</param>
    /// <returns>The items.</returns>
    internal static IEnumerable<DrawingItem> Paint(IReadOnlyList<Threshold> thresholds, PlotFrame frame)
    {
        // The leftmost line gets the highest row: words start to the right of their line and cross no other line.
        Threshold[] ordered = [.. thresholds.OrderByDescending(t => t.Value)];
        for (int i = 0; i < ordered.Length; i++)
        {
            Style style = ThresholdStyle.Of(ordered[i].Kind);
            double x = frame.AtX(ordered[i].Value);
            double y = frame.Area.Top - 2.2 - (i * RowMm);
            yield return new Line(new(x, y), new(x, frame.Area.Bottom), style);
            yield return ThresholdStyle.Sign(ordered[i].Kind, new Point(x, y));
            string words = PrintableText.OneLine(ordered[i].Words);
            bool right = x + 2 + TextMetrics.WidthMm(words, EndLabel.SizePt) <= frame.Area.Right;
            yield return new Text(
                new(right ? x + 2 : x - 2, y + 0.95), words, EndLabel.SizePt, right ? TextAnchor.Start : TextAnchor.End, Colour: style.Stroke);
        }
    }
}
