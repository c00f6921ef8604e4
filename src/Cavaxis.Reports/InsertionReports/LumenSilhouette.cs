using Cavaxis.Anatomy.Lumens;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.InsertionReports;

/// <summary>The shadow of the parts of a lumen: first all with a wide edge, then all filled, so that only the edge of the whole is left.</summary>
internal static class LumenSilhouette
{
    private const double StepMm = 6;

    /// <summary>Seen along the line of sight a tube runs at us where its shadow moves less than this share of the step.</summary>
    private const double EndOn = 0.5;

    /// <summary>Items of the shadow.</summary>
    /// <param name="lumen">The lumen.</param>
    /// <param name="view">The view.</param>
    public static IEnumerable<DrawingItem> Of(CavalLumen lumen, ViewScale view)
    {
        Style edge = new() { Stroke = Colour.Wall, StrokeWidthMm = 0.5, Fill = Colour.Lumen };
        Style inside = Style.Area(Colour.Lumen);
        foreach (Style style in new[] { edge, inside })
        {
            foreach (SweptTube part in lumen.Joined.Parts)
            {
                foreach (DrawingItem item in Shadow(part, view, style))
                {
                    yield return item;
                }
            }
        }
    }

    private static IEnumerable<DrawingItem> Shadow(SweptTube part, ViewScale view, Style style)
    {
        int pieces = Math.Max(2, (int)Math.Ceiling((part.EndMm - part.StartMm) / StepMm));
        double[] arcs = [.. Enumerable.Range(0, pieces + 1).Select(i => part.StartMm + (i * (part.EndMm - part.StartMm) / pieces))];
        Point[] points = [.. arcs.Select(arc => view.At(part.PointAt(arc)))];
        double[] radii = [.. arcs.Select(arc => view.Scale * part.RadiusAt(arc))];
        for (int i = 0; i <= pieces; i++)
        {
            bool end = i == 0 || i == pieces;
            if (end || Length(points[i - 1], points[i]) < EndOn * view.Scale * StepMm || i % 4 == 0)
            {
                yield return new Circle(points[i], radii[i], style);
            }
        }

        List<Point> left = [];
        List<Point> right = [];
        for (int i = 0; i <= pieces; i++)
        {
            (Point a, Point b) = (points[Math.Max(0, i - 1)], points[Math.Min(pieces, i + 1)]);
            double length = Length(a, b);
            if (length < EndOn * view.Scale * StepMm)
            {
                continue;
            }

            (double x, double y) = ((b.X - a.X) / length, (b.Y - a.Y) / length);
            left.Add(new Point(points[i].X - (radii[i] * y), points[i].Y + (radii[i] * x)));
            right.Add(new Point(points[i].X + (radii[i] * y), points[i].Y - (radii[i] * x)));
        }

        if (left.Count > 1)
        {
            right.Reverse();
            yield return new Polygon([.. left, .. right], style);
        }
    }

    private static double Length(Point a, Point b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));
}
