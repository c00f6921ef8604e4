using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>Paints veins and atrium: one silhouette with a common outline, then the details.</summary>
internal sealed class AnatomyPainter
{
    private const double WallMm = 0.45;
    private const double ArchNearMm = 20;
    private const double HepaticDiameters = 1.1;
    private const double RenalDiameters = 1.2;

    private readonly AxisScene scene;
    private readonly AxisFrame frame;
    private readonly AxisTrunk trunk;
    private readonly AtriumShape atrium;

    internal AnatomyPainter(AxisScene scene, AxisFrame frame, AxisTrunk trunk)
    {
        (this.scene, this.frame, this.trunk) = (scene, frame, trunk);
        atrium = new AtriumShape(scene, frame, trunk);
    }

    /// <summary>What lies beside the trunk, once painted; names of segments keep clear of it.</summary>
    internal List<Box> Busy { get; } = [];

    /// <summary>Middle of the tricuspid opening on the paper; none where the scene has none.</summary>
    internal Point? Valve => atrium.Valve;

    /// <summary>All items.</summary>
    internal IEnumerable<DrawingItem> Paint()
    {
        List<IReadOnlyList<Point>> shapes = [TrunkTube(), .. Stubs(), .. Branches(), atrium.Outline];

        // Outlines first, fills over them: where shapes overlap the inner outlines vanish and one silhouette is left.
        foreach (IReadOnlyList<Point> shape in shapes)
        {
            Box box = Box.Around(shape);
            if (shape != shapes[0] && shape != atrium.Outline)
            {
                Busy.Add(box);
            }

            yield return new Polygon(shape, Style.Line(Colour.Wall, WallMm * 2));
        }

        foreach (IReadOnlyList<Point> shape in shapes)
        {
            yield return new Polygon(shape, Style.Area(Colour.Lumen));
        }

        foreach (DrawingItem item in LumenSpread().Concat(Planes()).Concat(atrium.Details(Busy)).Concat(Arch()))
        {
            yield return item;
        }
    }

    /// <summary>Right wall of trunk or atrium at a height.</summary>
    internal double RightWall(double z)
    {
        Point centre = trunk.Centre(z);
        double wall = centre.X + trunk.Radius(z, d => d.High);
        bool inAtrium = z > trunk.Atrium.TopMm && z < trunk.Atrium.BottomMm;
        return inAtrium ? Math.Max(wall, atrium.RightEdgeAt(centre.Y)) : wall;
    }

    /// <summary>Left wall of trunk or atrium at a height; beyond the trunk's ends, of the stub on that side.</summary>
    internal double LeftWall(double z)
    {
        Point centre = trunk.Centre(Math.Clamp(z, frame.ZTop, frame.ZBottom));
        double wall = centre.X - trunk.Radius(Math.Clamp(z, frame.ZTop, frame.ZBottom), d => d.Median);
        bool inAtrium = z > trunk.Atrium.TopMm && z < trunk.Atrium.BottomMm;
        return inAtrium ? Math.Min(wall, atrium.LeftEdgeAt(centre.Y)) : wall;
    }

    private double[] Levels(double from, double to)
    {
        int steps = Math.Max(4, (int)Math.Ceiling((to - from) / frame.Scale));
        return [.. Enumerable.Range(0, steps + 1).Select(i => from + ((to - from) * i / steps))];
    }

    private IReadOnlyList<Point> TrunkTube()
    {
        double[] levels = Levels(frame.ZTop, frame.ZBottom);
        return Curve.Tube([.. levels.Select(trunk.Centre)], i => trunk.Radius(levels[i], d => d.Median));
    }

    private IEnumerable<IReadOnlyList<Point>> Stubs()
    {
        foreach (EntrySite site in Enum.GetValues<EntrySite>())
        {
            bool neck = site is EntrySite.RightNeck or EntrySite.LeftNeck;
            double end = neck ? frame.ZTop : frame.ZBottom;
            double outer = trunk.OuterEnd(site, scene.SkinOf(site));
            double inner = end + ((neck ? 1 : -1) * 6 * frame.Scale);
            IReadOnlyList<Point> way = trunk.Way(site, outer, inner);
            double mouth = trunk.Radius(end, d => d.Median);
            yield return Curve.Tube(way, i => mouth * (0.68 + (0.2 * i / (way.Count - 1))));
        }
    }

    private IEnumerable<IReadOnlyList<Point>> Branches()
    {
        foreach (AxisLandmark landmark in scene.Landmarks.Where(l => trunk.Holds(l.PositionMm.Median)))
        {
            Point root = trunk.Centre(landmark.PositionMm.Median);
            double r = trunk.Radius(landmark.PositionMm.Median, d => d.Median);
            if (landmark.Kind == LandmarkKind.HepaticVein)
            {
                yield return Branch(root, -1, 0.62, HepaticDiameters * 2 * r, r * 0.42);
            }
            else if (landmark.Kind == LandmarkKind.RenalVeins)
            {
                yield return Branch(root, -1, 0.16, RenalDiameters * 2 * r, r * 0.46);
                yield return Branch(root, 1, 0.1, RenalDiameters * 2.5 * r, r * 0.46);
            }
        }
    }

    private static IReadOnlyList<Point> Branch(Point root, double side, double fall, double length, double radius)
    {
        Point end = root.Moved(side * length, fall * length);
        Point[] way = [root, .. Curve.Bezier(root, root.Moved(side * length * 0.5, 0), root.Moved(side * length * 0.7, fall * length * 0.6), end)];
        return Curve.Tube(way, i => radius * (1.15 - (0.35 * i / (way.Length - 1))));
    }

    /// <summary>Dotted walls at the 5 and 95 % lumen beside the median wall.</summary>
    private IEnumerable<DrawingItem> LumenSpread()
    {
        (double From, double To)[] stretches =
            [(frame.ZTop, trunk.Atrium.TopMm), (trunk.Atrium.BottomMm, frame.ZBottom)];
        foreach ((double from, double to) in stretches)
        {
            double[] levels = Levels(from, to);
            Point[] centre = [.. levels.Select(trunk.Centre)];
            foreach (Func<Spread, double> percentile in new Func<Spread, double>[] { d => d.Low, d => d.High })
            {
                (Point[] left, Point[] right) = Curve.Walls(centre, i => trunk.Radius(levels[i], percentile));
                yield return new Polyline(left, Style.Line(Colour.Wall, 0.18, Dash.Dotted));
                yield return new Polyline(right, Style.Line(Colour.Wall, 0.18, Dash.Dotted));
            }
        }
    }

    private IEnumerable<DrawingItem> Planes()
    {
        foreach (AxisLandmark landmark in scene.Landmarks.Where(l => l.Kind == LandmarkKind.Junction && trunk.Holds(l.PositionMm.Median)))
        {
            Point c = trunk.Centre(landmark.PositionMm.Median);
            double r = trunk.Radius(landmark.PositionMm.Median, d => d.Median);
            yield return new Line(c.Moved(-r, 0), c.Moved(r, 0), Style.Line(Colour.Ink, 0.25, Dash.Dashed));
        }
    }

    private IEnumerable<DrawingItem> Arch()
    {
        foreach (AxisLandmark landmark in scene.Landmarks.Where(l => l.Kind == LandmarkKind.Diaphragm && trunk.Holds(l.PositionMm.Median)))
        {
            Point c = trunk.Centre(landmark.PositionMm.Median);
            double r = trunk.Radius(landmark.PositionMm.Median, d => d.Median);
            foreach (double side in new[] { -1.0, 1.0 })
            {
                Point from = c.Moved(side * r, 0);
                Busy.Add(new Box(Math.Min(from.X, from.X + (side * ArchNearMm)), c.Y - 1.8, Math.Max(from.X, from.X + (side * ArchNearMm)), c.Y + 0.5));
                double reach = side < 0 ? from.X - AxisFrame.BodyLeft - 0.5 : AxisFrame.BodyRight - from.X - 0.5;
                Point to = from.Moved(side * reach, 3.5);
                yield return new Polyline(
                    [from, .. Curve.Bezier(from, from.Moved(side * reach * 0.35, -2.2), from.Moved(side * reach * 0.8, -1), to)],
                    Style.Line(Colour.Muted, 0.4, Dash.DashDot));
            }
        }
    }
}
