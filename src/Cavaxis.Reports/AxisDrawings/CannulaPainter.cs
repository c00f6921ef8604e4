using Cavaxis.Devices.Cannulae;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>Paints cannulae with their holes and the direction of flow. Diameters and lengths are to scale.</summary>
internal sealed class CannulaPainter
{
    private const double HoleGapMm = 1.5;
    private const double JetMm = 6.5;
    private const double ClearanceMm = 0.3;

    private readonly AxisScene scene;
    private readonly AxisFrame frame;
    private readonly AxisTrunk trunk;
    private readonly Point? valve;
    private readonly double[] offsets;

    internal CannulaPainter(AxisScene scene, AxisFrame frame, AxisTrunk trunk, Point? valve)
    {
        (this.scene, this.frame, this.trunk, this.valve) = (scene, frame, trunk, valve);
        offsets = Offsets();
    }

    /// <summary>All cannulae.</summary>
    internal IEnumerable<DrawingItem> Paint()
    {
        for (int i = 0; i < scene.Cannulae.Count; i++)
        {
            SceneCannula cannula = scene.Cannulae[i];
            double outer = trunk.OuterEnd(cannula.Entry, null);
            bool above = cannula.Entry is EntrySite.RightNeck or EntrySite.LeftNeck;
            if (above == cannula.TipMm.Median <= outer)
            {
                continue;
            }

            foreach (DrawingItem item in Body(cannula, outer, offsets[i]))
            {
                yield return item;
            }

            foreach (DrawingItem item in cannula.Ports.Where(p => Shown(p.PositionMm.Median, outer, cannula.TipMm.Median)).SelectMany(p => Port(cannula, p, outer, offsets[i])))
            {
                yield return item;
            }
        }
    }

    /// <summary>Place of a position of a cannula on the paper.</summary>
    internal Point At(int cannulaIndex, double z)
    {
        EntrySite site = scene.Cannulae[cannulaIndex].Entry;
        double outer = trunk.OuterEnd(site, null);
        bool above = site is EntrySite.RightNeck or EntrySite.LeftNeck;
        double kept = above ? Math.Max(z, outer + 1) : Math.Min(z, outer - 1);
        return trunk.Way(site, outer, kept, offsets[cannulaIndex])[^1];
    }

    /// <summary>Left edge of whatever lies in the lumen near a height, arrows included; the middle of the lumen where it is empty.</summary>
    internal double LeftEdgeNear(double z)
    {
        double edge = trunk.Centre(z).X;
        for (int i = 0; i < scene.Cannulae.Count; i++)
        {
            SceneCannula cannula = scene.Cannulae[i];
            (double from, double to) = Extent(cannula);
            double near = JetMm * frame.Scale;
            if (z < from - near || z > to + near)
            {
                continue;
            }

            bool arrows = cannula.Ports.Any(p => p.Facing != PortFacing.TowardTricuspid && Math.Abs(p.PositionMm.Median - z) < near);
            edge = Math.Min(edge, At(i, Math.Clamp(z, from, to)).X - (cannula.OuterDiameterMm / 2 / frame.Scale) - (arrows ? JetMm : 0));
        }

        return edge;
    }

    private static bool Shown(double z, double outer, double tip) => z >= Math.Min(outer, tip) - 1 && z <= Math.Max(outer, tip) + 1;

    /// <summary>Cannulae that lie beside each other are moved apart, as far as their diameters ask.</summary>
    private double[] Offsets()
    {
        double[] moved = new double[scene.Cannulae.Count];
        for (int i = 0; i < moved.Length; i++)
        {
            for (int j = i + 1; j < moved.Length; j++)
            {
                SceneCannula a = scene.Cannulae[i];
                SceneCannula b = scene.Cannulae[j];
                (double From, double To) first = Extent(a);
                (double From, double To) second = Extent(b);
                if (Math.Min(first.To, second.To) - Math.Max(first.From, second.From) > -4)
                {
                    bool aOnLeft = a.Entry is EntrySite.RightGroin or EntrySite.RightNeck
                        && (b.Entry is EntrySite.LeftGroin or EntrySite.LeftNeck || a.Entry == EntrySite.RightGroin);
                    double apart = (((a.OuterDiameterMm + b.OuterDiameterMm) / 4) / frame.Scale) + ClearanceMm;
                    moved[i] += aOnLeft ? -apart : apart;
                    moved[j] += aOnLeft ? apart : -apart;
                }
            }
        }

        return moved;
    }

    private (double From, double To) Extent(SceneCannula cannula)
    {
        double outer = trunk.OuterEnd(cannula.Entry, null);
        return (Math.Min(outer, cannula.TipMm.Median), Math.Max(outer, cannula.TipMm.Median));
    }

    private IEnumerable<DrawingItem> Body(SceneCannula cannula, double outer, double offset)
    {
        IReadOnlyList<Point> way = trunk.Way(cannula.Entry, outer, cannula.TipMm.Median, offset);
        double r = cannula.OuterDiameterMm / 2 / frame.Scale;
        double taper = Math.Min(way.Count - 1, Math.Max(2, r * 1.6));
        double RadiusAt(int i) => i > way.Count - 1 - taper
            ? r * Math.Sqrt(Math.Max(0.12, 1 - Math.Pow(1 - ((way.Count - 1 - i) / taper), 2)))
            : r;
        Colour tone = Tone(cannula);
        yield return new Polygon(
            Curve.Tube(way, RadiusAt), new Style { Fill = new Colour(0xFB, 0xFB, 0xF8), Stroke = tone, StrokeWidthMm = 0.4 });
        (Point[] left, _) = Curve.Walls(way, i => RadiusAt(i) * 0.45);
        yield return new Polyline(left, Style.Line(Colour.Faint, Math.Min(0.5, r * 0.4)));
    }

    private IEnumerable<DrawingItem> Port(SceneCannula cannula, ScenePort port, double outer, double offset)
    {
        Colour tone = Tone(port.Purpose);
        double r = cannula.OuterDiameterMm / 2 / frame.Scale;
        double direction = outer < cannula.TipMm.Median ? 1 : -1;
        double half = port.SpanMm / 2;
        double step = HoleGapMm * frame.Scale;
        int count = Math.Max(1, (int)Math.Round(port.SpanMm / step));
        Point End(double z) => trunk.Way(cannula.Entry, outer, z, offset)[^1];
        if (port.Facing != PortFacing.End)
        {
            double size = Math.Min(0.55, r * 0.42);
            double side = port.Facing switch { PortFacing.TowardTricuspid => 1, PortFacing.AwayFromTricuspid => -1, _ => 0 };
            for (int k = 0; k < count; k++)
            {
                double z = port.PositionMm.Median - half + (port.SpanMm * (k + 0.5) / count);
                Point c = End(z);
                double x = side != 0 ? side * r * 0.75 : (k % 2 == 0 ? -1 : 1) * r * 0.5;
                yield return new Circle(c.Moved(x, 0), size, Style.Area(tone));
            }
        }

        foreach (DrawingItem arrow in Flow(port, End(port.PositionMm.Median), r, direction, tone))
        {
            yield return arrow;
        }
    }

    /// <summary>Arrows into drainage holes, and out of the return port to where it looks.</summary>
    private IEnumerable<DrawingItem> Flow(ScenePort port, Point c, double r, double direction, Colour tone)
    {
        Style thick = Style.Line(tone, 0.7);
        bool inward = port.Purpose == LumenPurpose.Drainage;
        Arrow Make(Point near, Point far) => inward ? new Arrow(far, near, thick, 1.6) : new Arrow(near, far, thick, 2.2);
        switch (port.Facing)
        {
            case PortFacing.End:
                yield return Make(c.Moved(0, direction * 0.6), c.Moved(0, direction * JetMm * 0.75));
                break;
            case PortFacing.TowardTricuspid when valve is Point v:
                double length = Math.Max(1e-6, c.DistanceTo(v));
                double reach = Math.Min(JetMm * 1.5, Math.Max(r + 3, length - 2));
                (double ux, double uy) = ((v.X - c.X) / length, (v.Y - c.Y) / length);
                yield return Make(c.Moved(ux * (r + 0.4), uy * (r + 0.4)), c.Moved(ux * reach, uy * reach));
                break;
            case PortFacing.TowardTricuspid:
                yield return Make(c.Moved(r + 0.4, 0), c.Moved(r + JetMm, 0));
                break;
            case PortFacing.AwayFromTricuspid:
                yield return Make(c.Moved(-r - 0.4, 0), c.Moved(-r - JetMm, 0));
                break;
            default:
                double shortJet = JetMm * 0.6;
                yield return Make(c.Moved(-r - 0.3, 0), c.Moved(-r - shortJet, 0));
                yield return Make(c.Moved(r + 0.3, 0), c.Moved(r + shortJet, 0));
                break;
        }
    }

    private static Colour Tone(SceneCannula cannula) =>
        cannula.Ports.Select(p => p.Purpose).Distinct().ToArray() is [LumenPurpose one] ? Tone(one) : Colour.Ink;

    /// <summary>Colour of a direction of flow.</summary>
    internal static Colour Tone(LumenPurpose purpose) => purpose == LumenPurpose.Drainage ? Colour.Drainage : Colour.Return;
}
