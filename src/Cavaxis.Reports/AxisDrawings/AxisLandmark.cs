namespace Cavaxis.Reports.AxisDrawings;

/// <summary>A named place along the axis.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">The words of its label.</param>
/// <param name="PositionMm">Where it lies, mm along the axis, growing toward the feet.</param>
public sealed record AxisLandmark(LandmarkKind Kind, string Name, Spread PositionMm);
