using System.Globalization;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.ArterialReports;

/// <summary>What colour and pattern of the arterial tree mean.</summary>
internal static class ArterialLegend
{
    private const double BarLeft = 40;
    private const double BarWidth = 46;
    private const double BarHeight = 3.4;
    private const int Steps = 46;
    private const double WordsPt = 8;

    private static readonly (BloodKind Kind, string Words, double Left)[] Patterns =
    [
        (BloodKind.Lungs, "lungs", 110), (BloodKind.Mixed, "mixed", 131), (BloodKind.Membrane, "membrane lung", 152),
    ];

    /// <summary>Paints the legend.</summary>
    /// <param name="items">Takes the items.</param>
    /// <param name="top">Upper edge, mm.</param>
    /// <returns>Lower edge, mm.</returns>
    internal static double Paint(List<DrawingItem> items, double top)
    {
        items.Add(new Text(new Point(4, top + 3), "Oxygen saturation, %", WordsPt));
        for (int i = 0; i < Steps; i++)
        {
            double percent = BloodPaint.LowestPercent + ((100 - BloodPaint.LowestPercent) * (i + 0.5) / Steps);
            double left = BarLeft + (BarWidth * i / Steps);
            items.Add(new Rectangle(new Box(left, top, left + (BarWidth / Steps) + 0.05, top + BarHeight), Style.Area(BloodPaint.Of(percent))));
        }

        foreach (double percent in new[] { 50d, 60, 70, 80, 90, 100 })
        {
            double x = BarLeft + (BarWidth * (percent - BloodPaint.LowestPercent) / (100 - BloodPaint.LowestPercent));
            items.Add(new Line(new Point(x, top + BarHeight), new Point(x, top + BarHeight + 1), Style.Line(Colour.Ink, 0.2)));
            items.Add(new Text(new Point(x, top + BarHeight + 4), percent.ToString(percent > BloodPaint.LowestPercent ? "F0" : "'≤'0", CultureInfo.InvariantCulture), 7, TextAnchor.Middle));
        }

        items.Add(new Text(new Point(92, top + 3), "Blood from", WordsPt));
        foreach ((BloodKind kind, string words, double left) in Patterns)
        {
            items.AddRange(BloodPaint.Strokes([new Point(left, top + 1.8), new Point(left + 8, top + 1.8)], 90, kind, 2));
            items.Add(new Text(new Point(left + 9.5, top + 3), words, WordsPt));
        }

        return top + BarHeight + 10;
    }
}
