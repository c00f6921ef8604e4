namespace Cavaxis.Reports.Drawings;

/// <summary>A place on the paper, in mm from its upper left corner; y grows downward.</summary>
/// <param name="X">From the left edge, mm.</param>
/// <param name="Y">From the upper edge, mm.</param>
public readonly record struct Point(double X, double Y)
{
    /// <summary>The point moved by a step.</summary>
    /// <param name="dx">Step to the right, mm.</param>
    /// <param name="dy">Step downward, mm.</param>
    /// <returns>The moved point.</returns>
    public Point Moved(double dx, double dy) => new(X + dx, Y + dy);

    /// <summary>Distance to another point, mm.</summary>
    /// <param name="other">The other point.</param>
    /// <returns>The distance.</returns>
    public double DistanceTo(Point other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));
}
