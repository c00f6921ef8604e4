namespace Cavaxis.Reports.AxisDrawings;

/// <summary>A stretch of the trunk. Positions in mm along the axis, growing toward the feet.</summary>
/// <param name="Kind">Which part.</param>
/// <param name="Name">Short name on the drawing, such as "SVC".</param>
/// <param name="TopMm">Upper end, median, mm.</param>
/// <param name="BottomMm">Lower end, median, mm; the upper end of the next segment.</param>
/// <param name="LumenDiameterMm">Diameter of the lumen, mm. For the atrium the drawing uses the mouths and the valve instead.</param>
/// <param name="LateralTopMm">Upper end's offset toward the patient's left, mm.</param>
/// <param name="LateralBottomMm">Lower end's offset toward the patient's left, mm.</param>
public sealed record AxisSegment(
    SegmentKind Kind,
    string Name,
    double TopMm,
    double BottomMm,
    Spread LumenDiameterMm,
    double LateralTopMm = 0,
    double LateralBottomMm = 0);
