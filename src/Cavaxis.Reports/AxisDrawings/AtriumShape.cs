using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>The right atrium as a rounded chamber with its appendage and the tricuspid opening; schematic but for mouths, span and valve.</summary>
internal sealed class AtriumShape
{
    private readonly Point? valveTop;
    private readonly Point? valveBottom;

    internal AtriumShape(AxisScene scene, AxisFrame frame, AxisTrunk trunk)
    {
        Point top = trunk.Centre(trunk.Atrium.TopMm);
        Point bottom = trunk.Centre(trunk.Atrium.BottomMm);
        double rTop = trunk.Radius(trunk.Atrium.TopMm, d => d.Median);
        double rBottom = trunk.Radius(trunk.Atrium.BottomMm, d => d.Median);
        double h = bottom.Y - top.Y;
        Point start = new(top.X - rTop, top.Y);
        Point leftEnd = new(bottom.X - rBottom, bottom.Y);
        Point rightEnd = new(bottom.X + rBottom, bottom.Y);
        Point back = new(top.X + rTop, top.Y);
        var outline = new List<Point> { start };
        outline.AddRange(Curve.Bezier(start, start.Moved(-h * 0.34, h * 0.22), leftEnd.Moved(-h * 0.34, -h * 0.2), leftEnd));
        outline.Add(rightEnd);
        if (scene.Tricuspid is TricuspidOpening valve)
        {
            double middleX = (top.X + bottom.X) / 2;
            double x = middleX + (valve.DistanceMm / frame.Scale);
            double half = valve.DiameterMm / frame.Scale / 2;
            double y = frame.Y(valve.CentreMm);

            // The valve looks to the left, forward and somewhat down: its upper edge leans outward.
            valveTop = new Point(x + (half * 0.16), y - (half * 0.98));
            valveBottom = new Point(x - (half * 0.16), y + (half * 0.98));
            Point upper = valveTop.Value;
            Point lower = valveBottom.Value;
            outline.AddRange(Curve.Bezier(rightEnd, rightEnd.Moved(h * 0.05, -h * 0.04), lower.Moved(-h * 0.12, h * 0.1), lower));
            outline.Add(upper);
            Point tip = new(Math.Min(upper.X, back.X + (h * 0.34)), Math.Min(top.Y + (h * 0.02), upper.Y - (h * 0.08)));
            outline.AddRange(Curve.Bezier(upper, upper.Moved(-h * 0.02, -h * 0.1), tip.Moved(h * 0.14, h * 0.02), tip));
            outline.AddRange(Curve.Bezier(tip, tip.Moved(-h * 0.14, -h * 0.02), back.Moved(h * 0.06, h * 0.1), back));
        }
        else
        {
            outline.AddRange(Curve.Bezier(rightEnd, rightEnd.Moved(h * 0.55, -h * 0.2), back.Moved(h * 0.6, h * 0.2), back));
        }

        Outline = outline;
    }

    /// <summary>Corners of the chamber.</summary>
    internal IReadOnlyList<Point> Outline { get; }

    /// <summary>Middle of the valve on the paper.</summary>
    internal Point? Valve => valveTop is Point a && valveBottom is Point b ? new Point((a.X + b.X) / 2, (a.Y + b.Y) / 2) : null;

    /// <summary>Right edge of the chamber at a height on the paper.</summary>
    internal double RightEdgeAt(double y) => Edges(y).DefaultIfEmpty(double.NegativeInfinity).Max();

    /// <summary>Left edge of the chamber at a height on the paper.</summary>
    internal double LeftEdgeAt(double y) => Edges(y).DefaultIfEmpty(double.PositiveInfinity).Min();

    /// <summary>The opening, its leaflets, and a hint of the ventricle beyond.</summary>
    /// <param name="busy">Takes the place of the words.</param>
    internal IEnumerable<DrawingItem> Details(List<Box> busy)
    {
        if (valveTop is not Point a || valveBottom is not Point b)
        {
            yield break;
        }

        double d = a.DistanceTo(b);
        Point middle = Valve!.Value;
        double depth = Math.Min(d * 0.7, AxisFrame.BodyRight - middle.X - 0.5);
        Point[] ventricle =
            [a, .. Curve.Bezier(a, a.Moved(depth * 0.9, -d * 0.05), middle.Moved(depth * 1.2, d * 0.45), b.Moved(depth * 0.55, d * 0.3)), b];
        yield return new Polygon(ventricle, Style.Area(Colour.Paper));
        yield return new Polyline(ventricle, Style.Line(Colour.Wall, 0.3, Dash.Dotted));
        yield return new Line(a, b, Style.Line(Colour.Lumen, 1.1));
        yield return new Line(a, b, Style.Line(Colour.Ink, 0.3, Dash.Dashed));
        foreach ((Point root, double turn) in new[] { (a, 1.0), (b, -1.0) })
        {
            Point end = root.Moved(d * 0.2, turn * d * 0.3);
            yield return new Polyline(
                [root, .. Curve.Bezier(root, root.Moved(d * 0.12, turn * d * 0.03), root.Moved(d * 0.18, turn * d * 0.16), end)],
                Style.Line(Colour.Ink, 0.4));
            yield return new Circle(root, 0.55, Style.Area(Colour.Ink));
        }

        busy.Add(Box.Around(ventricle));
        var words = new Text(middle.Moved(depth * 0.56, (d * 0.3) + 0.9), "RV", 7, TextAnchor.Middle, Colour: Colour.Muted);
        busy.Add(TextMetrics.BoundsOf(words));
        yield return words;
    }

    private IEnumerable<double> Edges(double y)
    {
        for (int i = 0; i < Outline.Count; i++)
        {
            Point p = Outline[i];
            Point q = Outline[(i + 1) % Outline.Count];
            if ((p.Y <= y) != (q.Y <= y))
            {
                yield return p.X + ((y - p.Y) / (q.Y - p.Y) * (q.X - p.X));
            }
        }
    }
}
