namespace Cavaxis.Reports.Drawings;

/// <summary>A circle.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="RadiusMm">Its radius, mm.</param>
/// <param name="Style">How it is drawn.</param>
public sealed record Circle(Point Centre, double RadiusMm, Style Style) : DrawingItem;
