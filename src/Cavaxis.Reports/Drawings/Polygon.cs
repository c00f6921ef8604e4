namespace Cavaxis.Reports.Drawings;

/// <summary>A closed area bounded by straight lines.</summary>
/// <param name="Points">At least three corners, in order.</param>
/// <param name="Style">How it is drawn.</param>
public sealed record Polygon(IReadOnlyList<Point> Points, Style Style) : DrawingItem;
