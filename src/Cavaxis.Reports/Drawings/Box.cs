namespace Cavaxis.Reports.Drawings;

/// <summary>An upright rectangle on the paper, in mm.</summary>
/// <param name="Left">Left edge, mm.</param>
/// <param name="Top">Upper edge, mm.</param>
/// <param name="Right">Right edge, mm.</param>
/// <param name="Bottom">Lower edge, mm.</param>
public readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Width, mm.</summary>
    public double Width => Right - Left;

    /// <summary>Height, mm.</summary>
    public double Height => Bottom - Top;

    /// <summary>The smallest box round some points.</summary>
    /// <param name="points">At least one point.</param>
    /// <returns>The box.</returns>
    public static Box Around(IReadOnlyList<Point> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        var box = new Box(points[0].X, points[0].Y, points[0].X, points[0].Y);
        foreach (Point p in points)
        {
            box = new Box(Math.Min(box.Left, p.X), Math.Min(box.Top, p.Y), Math.Max(box.Right, p.X), Math.Max(box.Bottom, p.Y));
        }

        return box;
    }

    /// <summary>Whether the two boxes share more than an edge.</summary>
    /// <param name="other">The other box.</param>
    /// <param name="tolerance">How much they may share without counting, mm.</param>
    /// <returns>True where they overlap.</returns>
    public bool Overlaps(Box other, double tolerance = 1e-9) =>
        Math.Min(Right, other.Right) - Math.Max(Left, other.Left) > tolerance
        && Math.Min(Bottom, other.Bottom) - Math.Max(Top, other.Top) > tolerance;

    /// <summary>Area shared with another box, mm².</summary>
    /// <param name="other">The other box.</param>
    /// <returns>The shared area, zero where they are apart.</returns>
    public double SharedArea(Box other) =>
        Math.Max(0, Math.Min(Right, other.Right) - Math.Max(Left, other.Left))
        * Math.Max(0, Math.Min(Bottom, other.Bottom) - Math.Max(Top, other.Top));

    /// <summary>Whether another box lies wholly inside this one.</summary>
    /// <param name="inner">The other box.</param>
    /// <param name="tolerance">How far it may stick out, mm.</param>
    /// <returns>True where it lies inside.</returns>
    public bool Holds(Box inner, double tolerance = 1e-9) =>
        inner.Left >= Left - tolerance && inner.Right <= Right + tolerance
        && inner.Top >= Top - tolerance && inner.Bottom <= Bottom + tolerance;
}
