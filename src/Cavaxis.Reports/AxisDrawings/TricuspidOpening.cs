namespace Cavaxis.Reports.AxisDrawings;

/// <summary>The tricuspid opening, drawn edge-on at the patient's left side of the atrium.</summary>
/// <param name="CentreMm">Middle of the annulus, median, mm along the axis.</param>
/// <param name="DiameterMm">Long diameter of the annulus, median, mm.</param>
/// <param name="DistanceMm">Distance of its middle from the line between the mouths, median, mm.</param>
public sealed record TricuspidOpening(double CentreMm, double DiameterMm, double DistanceMm);
