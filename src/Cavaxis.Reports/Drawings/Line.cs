namespace Cavaxis.Reports.Drawings;

/// <summary>A straight line.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="Style">How it is drawn.</param>
public sealed record Line(Point From, Point To, Style Style) : DrawingItem;
