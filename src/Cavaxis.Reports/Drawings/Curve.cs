namespace Cavaxis.Reports.Drawings;

/// <summary>Smooth curves given as short straight pieces.</summary>
internal static class Curve
{
    /// <summary>Points of a cubic Bézier curve after its first point.</summary>
    /// <param name="from">Start, not repeated in the result.</param>
    /// <param name="control1">Pulls the start.</param>
    /// <param name="control2">Pulls the end.</param>
    /// <param name="to">End.</param>
    /// <param name="steps">Number of pieces.</param>
    /// <returns>The points up to and with the end.</returns>
    internal static IEnumerable<Point> Bezier(Point from, Point control1, Point control2, Point to, int steps = 16)
    {
        for (int i = 1; i <= steps; i++)
        {
            double t = (double)i / steps;
            double s = 1 - t;
            double a = s * s * s;
            double b = 3 * s * s * t;
            double c = 3 * s * t * t;
            double d = t * t * t;
            yield return new Point(
                (a * from.X) + (b * control1.X) + (c * control2.X) + (d * to.X),
                (a * from.Y) + (b * control1.Y) + (c * control2.Y) + (d * to.Y));
        }
    }

    /// <summary>The closed outline of a tube round a centre line, with a radius at every point.</summary>
    /// <param name="centre">At least two points, none twice in a row.</param>
    /// <param name="radius">Radius at each point, mm.</param>
    /// <returns>Corners: one wall forward, the other back.</returns>
    internal static IReadOnlyList<Point> Tube(IReadOnlyList<Point> centre, Func<int, double> radius)
    {
        (Point[] left, Point[] right) = Walls(centre, radius);
        return [.. left, .. right.Reverse()];
    }

    /// <summary>The two walls of a tube.</summary>
    /// <param name="centre">At least two points, none twice in a row.</param>
    /// <param name="radius">Radius at each point, mm; signed values move to the other side.</param>
    /// <returns>Wall on the left of the direction of travel downward paper (larger x first when going up), and the other.</returns>
    internal static (Point[] Left, Point[] Right) Walls(IReadOnlyList<Point> centre, Func<int, double> radius)
    {
        var left = new Point[centre.Count];
        var right = new Point[centre.Count];
        for (int i = 0; i < centre.Count; i++)
        {
            Point before = centre[Math.Max(0, i - 1)];
            Point after = centre[Math.Min(centre.Count - 1, i + 1)];
            double length = Math.Max(1e-9, before.DistanceTo(after));
            double nx = -(after.Y - before.Y) / length;
            double ny = (after.X - before.X) / length;
            double r = radius(i);
            left[i] = centre[i].Moved(nx * r, ny * r);
            right[i] = centre[i].Moved(-nx * r, -ny * r);
        }

        return (left, right);
    }
}
