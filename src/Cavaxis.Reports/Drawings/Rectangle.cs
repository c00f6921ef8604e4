namespace Cavaxis.Reports.Drawings;

/// <summary>An upright rectangle.</summary>
/// <param name="Bounds">Its edges.</param>
/// <param name="Style">How it is drawn.</param>
/// <param name="CornerMm">Radius of the corners, mm.</param>
public sealed record Rectangle(Box Bounds, Style Style, double CornerMm = 0) : DrawingItem;
