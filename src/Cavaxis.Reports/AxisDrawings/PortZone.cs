namespace Cavaxis.Reports.AxisDrawings;

/// <summary>Where a port is wanted, and whether it lies there well enough.</summary>
/// <param name="LowMm">Upper end of the zone, mm along the axis.</param>
/// <param name="HighMm">Lower end of the zone, mm along the axis.</param>
/// <param name="Acceptable">The plan's judgement.</param>
/// <param name="Probability">Probability that the port lies in the zone, 0 to 1; not written where null.</param>
public sealed record PortZone(double LowMm, double HighMm, bool Acceptable, double? Probability = null);
