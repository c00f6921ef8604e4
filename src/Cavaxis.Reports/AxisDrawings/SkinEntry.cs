namespace Cavaxis.Reports.AxisDrawings;

/// <summary>A skin entry. Beyond the drawing's edge it becomes a break mark with the true distance in words.</summary>
/// <param name="Site">Which vein, which side.</param>
/// <param name="Name">The words of its label.</param>
/// <param name="PositionMm">Where it lies along the veins, mm on the axis: negative above its zero.</param>
public sealed record SkinEntry(EntrySite Site, string Name, Spread PositionMm);
