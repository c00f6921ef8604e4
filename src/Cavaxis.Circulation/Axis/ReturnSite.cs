namespace Cavaxis.Circulation.Axis;

/// <summary>A return port.</summary>
/// <param name="PositionMm">Position, mm along the axis.</param>
/// <param name="Direction">Where its jet points.</param>
/// <param name="DiameterMm">Diameter of the jet where it leaves.</param>
/// <param name="RotationDeg">For a sideways port: turn about the cannula away from the valve, degrees.</param>
public readonly record struct ReturnSite(double PositionMm, ReturnDirection Direction, double DiameterMm, double RotationDeg = 0);
