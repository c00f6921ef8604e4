namespace Cavaxis.Reports.Drawings;

/// <summary>A straight line with a filled head at its end.</summary>
/// <param name="From">Tail.</param>
/// <param name="To">Tip of the head.</param>
/// <param name="Style">How the line is drawn; the head takes the stroke's colour.</param>
/// <param name="HeadMm">Length of the head, mm.</param>
public sealed record Arrow(Point From, Point To, Style Style, double HeadMm = 2) : DrawingItem;
