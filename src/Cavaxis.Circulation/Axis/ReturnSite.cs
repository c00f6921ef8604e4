namespace Cavaxis.Circulation.Axis;

/// <summary>The port through which blood comes back.</summary>
/// <param name="PositionMm">Arc length from the superior cavo-atrial junction, mm, positive to the feet.</param>
/// <param name="Direction">Where the jet points.</param>
/// <param name="RotationDeg">Turn of a side port away from the tricuspid valve, −180 to 180 degrees; without meaning for axial jets.</param>
/// <param name="DiameterMm">Diameter of the port, mm.</param>
/// <param name="LateralDistanceToTricuspidMm">From the axis to the plane of the tricuspid annulus, mm.</param>
/// <param name="AnnulusRadiusMm">Radius of the tricuspid annulus, mm.</param>
public readonly record struct ReturnSite(
    double PositionMm,
    JetDirection Direction,
    double RotationDeg,
    double DiameterMm,
    double LateralDistanceToTricuspidMm,
    double AnnulusRadiusMm);
