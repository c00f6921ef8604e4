namespace Cavaxis.Anatomy.Axis;

/// <summary>
/// The free dimensions of the cavo-atrial axis and its access vessels. Lengths and diameters in mm, angles in degrees.
/// SCAJ and ICAJ are the superior and inferior cavo-atrial junctions; both are stored with the edge that defines them.
/// </summary>
public enum AxisDimension
{
    /// <summary>Right jugular skin entry to SCAJ along the vein, mm. Depends on the height of the entry,
    /// <see cref="NeckEntry"/>.</summary>
    RightNeckSkinToScaj,

    /// <summary>How much longer the left jugular way is than the right, mm.</summary>
    LeftNeckExtra,

    /// <summary>SVC length from the brachiocephalic confluence to SCAJ, mm.</summary>
    SvcLength,

    /// <summary>SCAJ to ICAJ in a straight line between the middles of the mouths, mm.</summary>
    AtrialSpan,

    /// <summary>Angle between the SVC and IVC axes in the frontal plane, degrees; 0 is collinear, positive where the
    /// way down turns to the patient's right.</summary>
    CavalBendFrontal,

    /// <summary>Angle between the SVC and IVC axes in the sagittal plane, degrees; 0 is collinear, positive where the
    /// way down turns to the back.</summary>
    CavalBendSagittal,

    /// <summary>Sideways offset of the inferior mouth from the superior one in the frontal plane, square to the
    /// bisector of the caval axes, mm; positive to the patient's right.</summary>
    MouthOffset,

    /// <summary>ICAJ to the upper edge of the right hepatic vein, mm.</summary>
    IcajToHepaticVein,

    /// <summary>ICAJ to the right renal vein, mm.</summary>
    IcajToRenalVein,

    /// <summary>Right renal vein to the iliac confluence, mm.</summary>
    RenalVeinToIliacConfluence,

    /// <summary>Right femoral skin entry to ICAJ along the veins, mm.</summary>
    RightGroinSkinToIcaj,

    /// <summary>How much longer the left femoral way is than the right, mm.</summary>
    LeftGroinExtra,

    /// <summary>Middle of the tricuspid annulus along the line SCAJ → ICAJ, as a fraction of it.</summary>
    TricuspidFraction,

    /// <summary>Distance of the middle of the tricuspid annulus from that line, to the front and left, mm.</summary>
    TricuspidDistance,

    /// <summary>Long diameter of the tricuspid annulus, mm.</summary>
    TricuspidDiameter,

    /// <summary>SVC circle-equivalent diameter, mm.</summary>
    SvcDiameter,

    /// <summary>Suprahepatic IVC circle-equivalent diameter, mm.</summary>
    IvcDiameter,

    /// <summary>Right internal jugular vein circle-equivalent diameter, lying flat, mm.</summary>
    RightJugularVeinDiameter,

    /// <summary>Left internal jugular vein circle-equivalent diameter, lying flat, mm.</summary>
    LeftJugularVeinDiameter,

    /// <summary>Right common femoral vein circle-equivalent diameter, lying flat, mm.</summary>
    RightFemoralVeinDiameter,

    /// <summary>Left common femoral vein circle-equivalent diameter, lying flat, mm.</summary>
    LeftFemoralVeinDiameter,

    /// <summary>Right common femoral artery diameter, mm.</summary>
    RightFemoralArteryDiameter,

    /// <summary>Left common femoral artery diameter, mm.</summary>
    LeftFemoralArteryDiameter,

    /// <summary>Right axillary artery diameter, mm.</summary>
    RightAxillaryArteryDiameter,

    /// <summary>Left axillary artery diameter, mm.</summary>
    LeftAxillaryArteryDiameter,

    /// <summary>Right common carotid artery diameter, mm (neck cannulation of small children).</summary>
    RightCarotidArteryDiameter,
}
