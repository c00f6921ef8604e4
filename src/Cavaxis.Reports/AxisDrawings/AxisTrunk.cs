using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>Centre line and lumen of the trunk, and of the side veins that join it above and below.</summary>
internal sealed class AxisTrunk
{
    private const double SmoothMm = 7;

    private readonly AxisFrame frame;
    private readonly IReadOnlyList<AxisSegment> segments;

    internal AxisTrunk(AxisScene scene, AxisFrame frame)
    {
        this.frame = frame;
        segments = scene.Segments;
        Atrium = segments.Single(s => s.Kind == SegmentKind.RightAtrium);
    }

    /// <summary>The atrium.</summary>
    internal AxisSegment Atrium { get; }

    /// <summary>Centre of the trunk on the paper; above and below it, of the trunk's ends.</summary>
    internal Point Centre(double z) => new(frame.X(Smoothed(z, Lateral)), frame.Y(z));

    /// <summary>Radius of the lumen on the paper by a percentile of the diameter.</summary>
    internal double Radius(double z, Func<Spread, double> percentile) =>
        Smoothed(z, v => percentile(Lumen(v))) / 2 / frame.Scale;

    /// <summary>Whether a position lies on the trunk.</summary>
    internal bool Holds(double z) => z >= frame.ZTop && z <= frame.ZBottom;

    /// <summary>Where the way of an entry leaves the drawing: a stub's length beyond the trunk, or the skin if that is nearer.</summary>
    internal double OuterEnd(EntrySite site, double? skinMm)
    {
        double stub = AxisFrame.StubMm * frame.Scale;
        return site is EntrySite.RightNeck or EntrySite.LeftNeck
            ? Math.Max(frame.ZTop - stub, Math.Min(skinMm ?? double.NegativeInfinity, frame.ZTop))
            : Math.Min(frame.ZBottom + stub, Math.Max(skinMm ?? double.PositiveInfinity, frame.ZBottom));
    }

    /// <summary>Points of a way from its outer end to a position, true in length, rounded where it joins the trunk.</summary>
    internal IReadOnlyList<Point> Way(EntrySite site, double from, double to, double offsetMm = 0)
    {
        const int reach = 4;
        int steps = Math.Max(2, (int)Math.Ceiling(Math.Abs(to - from) / frame.Scale));
        Point[] raw = [.. Enumerable.Range(0, steps + 1).Select(i => On(site, from + ((to - from) * i / steps)).Moved(offsetMm, 0))];
        return
        [
            .. raw.Select((p, i) =>
            {
                int w = Math.Min(reach, Math.Min(i, steps - i));
                Point[] near = raw[(i - w)..(i + w + 1)];
                return new Point(near.Average(q => q.X), near.Average(q => q.Y));
            }),
        ];
    }

    private Point On(EntrySite site, double z)
    {
        if (Holds(z))
        {
            return Centre(z);
        }

        double end = z < frame.ZTop ? frame.ZTop : frame.ZBottom;
        (double dx, double dy) = site switch
        {
            EntrySite.RightNeck => (-0.42, -0.91),
            EntrySite.LeftNeck => (0.85, -0.53),
            EntrySite.RightGroin => (-0.58, 0.81),
            _ => (0.62, 0.78),
        };
        double way = Math.Abs(z - end) / frame.Scale;
        return Centre(end).Moved(dx * way, dy * way);
    }

    private static double Smoothed(double z, Func<double, double> of)
    {
        double sum = 0;
        const int half = 4;
        for (int k = -half; k <= half; k++)
        {
            sum += of(z + (k * SmoothMm / half));
        }

        return sum / ((2 * half) + 1);
    }

    private double Lateral(double z)
    {
        double kept = Math.Clamp(z, frame.ZTop, frame.ZBottom);
        AxisSegment s = segments.First(g => kept <= g.BottomMm || g == segments[^1]);
        return s.LateralTopMm + ((s.LateralBottomMm - s.LateralTopMm) * (kept - s.TopMm) / (s.BottomMm - s.TopMm));
    }

    private Spread Lumen(double z)
    {
        // The atrium has no tube of its own: its upper half carries on the superior cava, its lower half the inferior.
        double middle = (Atrium.TopMm + Atrium.BottomMm) / 2;
        return z < middle
            ? segments.Last(s => s.Kind == SegmentKind.SuperiorVenaCava && (s.TopMm <= z || s == segments[0])).LumenDiameterMm
            : segments.First(s => s.Kind == SegmentKind.InferiorVenaCava && (s.BottomMm >= z || s == segments[^1])).LumenDiameterMm;
    }
}
