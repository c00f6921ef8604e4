using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>Writes names and lumens of the segments where nothing else lies; a name without a free place is left out.</summary>
internal sealed class SegmentNames
{
    private const double SizePt = 6.8;
    private const double LineMm = 3.1;
    private const double NameMm = 14;
    private const int Places = 37;

    private readonly AxisScene scene;
    private readonly AxisFrame frame;
    private readonly AnatomyPainter anatomy;
    private readonly CannulaPainter cannulae;
    private readonly List<Box> taken;

    /// <summary>Prepares the names; anatomy must have been painted.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="frame">Its frame.</param>
    /// <param name="anatomy">Knows walls and what lies beside them.</param>
    /// <param name="cannulae">Knows where cannulae lie.</param>
    /// <param name="rightMargin">Its leaders cross the place of the names.</param>
    internal SegmentNames(
        AxisScene scene, AxisFrame frame, AnatomyPainter anatomy, CannulaPainter cannulae, IReadOnlyList<MarginEntry> rightMargin)
    {
        (this.scene, this.frame, this.anatomy, this.cannulae) = (scene, frame, anatomy, cannulae);
        taken =
        [
            .. anatomy.Busy.Where(b => b.Height < frame.TrunkBottom - frame.TrunkTop),
            .. rightMargin.Select(e => new Box(AxisFrame.BodyMiddle, e.At.Y - 1, AxisFrame.Ruler, e.At.Y + 1)),
        ];
    }

    /// <summary>All names that find a place.</summary>
    internal IEnumerable<DrawingItem> Paint() =>
        scene.Segments.SelectMany(s => s.Kind == SegmentKind.RightAtrium && Inside(s) is { Count: > 0 } inside ? inside : Beside(s));

    private IReadOnlyList<DrawingItem> Beside(AxisSegment segment)
    {
        (string Words, bool Bold)[] lines =
        [
            .. Name(segment).Select(l => (l, true)),
            .. segment.Kind == SegmentKind.RightAtrium ? [] : AxisWords.Diameter(segment.LumenDiameterMm).Select(l => (l, false)),
        ];
        double width = lines.Max(l => TextMetrics.WidthMm(l.Words, SizePt, l.Bold));
        double height = lines.Length * LineMm;
        for (int i = 0; i < Places; i++)
        {
            // From the middle of the segment outward, a step up and a step down in turn.
            double share = 0.5 + ((i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * 0.9 / Places);
            double z = segment.TopMm + ((segment.BottomMm - segment.TopMm) * share);
            double reach = height / 2 * frame.Scale;
            double left = 1.4 + Math.Max(anatomy.RightWall(z), Math.Max(anatomy.RightWall(z - reach), anatomy.RightWall(z + reach)));
            double top = frame.Y(z) - (height / 2);
            var box = new Box(left - 0.5, top - 0.2, left + width + 0.5, top + height + 0.2);
            if (box.Right <= AxisFrame.Ruler - 4.5 && !taken.Exists(t => t.Overlaps(box)))
            {
                taken.Add(box);
                return [.. lines.Select((l, k) => Words(new(left, top + (LineMm * (k + 0.75))), l.Words, l.Bold))];
            }
        }

        return [];
    }

    /// <summary>The atrium's name stands in its right half, clear of all cannulae, where there is room.</summary>
    private IReadOnlyList<DrawingItem> Inside(AxisSegment atrium)
    {
        IReadOnlyList<string> lines = Name(atrium);
        double width = lines.Max(l => TextMetrics.WidthMm(l, SizePt, bold: true));
        double height = lines.Count * LineMm;
        foreach (double share in new[] { 0.3, 0.4, 0.5, 0.6 })
        {
            double z = atrium.TopMm + ((atrium.BottomMm - atrium.TopMm) * share);
            double left = anatomy.LeftWall(z) + 1.8;
            if (left + width + 0.5 <= cannulae.LeftEdgeNear(z) && height < frame.Y(atrium.BottomMm) - frame.Y(atrium.TopMm))
            {
                double top = frame.Y(z) - (height / 2);
                return [.. lines.Select((l, k) => Words(new(left, top + (LineMm * (k + 0.75))), l, bold: true))];
            }
        }

        return [];
    }

    private static IReadOnlyList<string> Name(AxisSegment segment) =>
        TextMetrics.Wrapped(PrintableText.OneLine(segment.Name), NameMm, SizePt, bold: true);

    private static Text Words(Point at, string words, bool bold) => new(at, words, SizePt, Colour: Colour.Wall, Bold: bold);
}
