namespace Cavaxis.Reports.Drawings;

/// <summary>Corner chains of round shapes, for renderers and hatching.</summary>
internal static class Outline
{
    private const int CircleCorners = 48;

    /// <summary>Corners of a closed item that can be hatched.</summary>
    /// <param name="item">Polygon, rectangle or circle.</param>
    /// <returns>Corners in order; empty for other items.</returns>
    internal static IReadOnlyList<Point> Of(DrawingItem item) => item switch
    {
        Polygon polygon => polygon.Points,
        Rectangle { Bounds: var b } =>
            [new(b.Left, b.Top), new(b.Right, b.Top), new(b.Right, b.Bottom), new(b.Left, b.Bottom)],
        Circle circle => Ellipse(circle.Centre, circle.RadiusMm, circle.RadiusMm),
        _ => [],
    };

    /// <summary>Corners of an upright ellipse.</summary>
    /// <param name="centre">Its centre.</param>
    /// <param name="radiusX">Half its width, mm.</param>
    /// <param name="radiusY">Half its height, mm.</param>
    /// <returns>Corners in order.</returns>
    internal static IReadOnlyList<Point> Ellipse(Point centre, double radiusX, double radiusY)
    {
        var corners = new Point[CircleCorners];
        for (int i = 0; i < CircleCorners; i++)
        {
            (double sin, double cos) = Math.SinCos(2 * Math.PI * i / CircleCorners);
            corners[i] = centre.Moved(radiusX * cos, radiusY * sin);
        }

        return corners;
    }

    /// <summary>The three corners of an arrow's head and where its line ends.</summary>
    /// <param name="arrow">The arrow.</param>
    /// <returns>Head corners, tip first, and the end of the line under the head.</returns>
    internal static (IReadOnlyList<Point> Head, Point LineEnd) ArrowHead(Arrow arrow)
    {
        double length = arrow.From.DistanceTo(arrow.To);
        double ux = length > 0 ? (arrow.To.X - arrow.From.X) / length : 1;
        double uy = length > 0 ? (arrow.To.Y - arrow.From.Y) / length : 0;
        Point foot = arrow.To.Moved(-ux * arrow.HeadMm, -uy * arrow.HeadMm);
        double half = arrow.HeadMm * 0.42;
        return ([arrow.To, foot.Moved(-uy * half, ux * half), foot.Moved(uy * half, -ux * half)],
            arrow.To.Moved(-ux * arrow.HeadMm * 0.8, -uy * arrow.HeadMm * 0.8));
    }
}
