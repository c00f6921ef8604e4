namespace Cavaxis.Reports.Drawings;

/// <summary>An open chain of straight lines.</summary>
/// <param name="Points">At least two points.</param>
/// <param name="Style">How it is drawn; its fill is ignored.</param>
public sealed record Polyline(IReadOnlyList<Point> Points, Style Style) : DrawingItem;
