namespace Cavaxis.Anatomy.Axis;

/// <summary>
/// The free dimensions of the cavo-atrial axis and its access vessels. Lengths and diameters in mm, angles in degrees.
/// SCAJ and ICAJ are the superior and inferior cavo-atrial junctions; both are stored with the edge that defines them.
/// </summary>
public enum AxisDimension
{
    /// <summary>Right jugular skin entry to SCAJ along the vein, mm.</summary>
    RightNeckSkinToScaj,

    /// <summary>How much longer the left jugular way is than the right, mm.</summary>
    LeftNeckExtra,

    /// <summary>SVC length from the brachiocephalic confluence to SCAJ, mm.</summary>
    SvcLength,

    /// <summary>SCAJ to ICAJ in a straight line between the middles of the mouths, mm.</summary>
    AtrialSpan,

    /// <summary>Angle between the SVC and IVC axes in the frontal plane, degrees; 0 is collinear.</summary>
    CavalBendFrontal,

    /// <summary>Angle between the SVC and IVC axes in the sagittal plane, degrees; 0 is collinear.</summary>
    CavalBendSagittal,

    /// <summary>Sideways offset of the inferior mouth from the superior one, mm.</summary>
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

    /// <summary>Distance of the middle of the tricuspid annulus from that line, mm.</summary>
    TricuspidDistance,

    /// <summary>Long diameter of the tricuspid annulus, mm.</summary>
    TricuspidDiameter,

    /// <summary>SVC circle-equivalent diameter, mm.</summary>
    SvcDiameter,

    /// <summary>Suprahepatic IVC circle-equivalent diameter, mm.</summary>
    IvcDiameter,

    /// <summary>Right internal jugular vein diameter, mm.</summary>
    RightJugularVeinDiameter,

    /// <summary>Left internal jugular vein diameter, mm.</summary>
    LeftJugularVeinDiameter,

    /// <summary>Right common femoral vein diameter, mm.</summary>
    RightFemoralVeinDiameter,

    /// <summary>Left common femoral vein diameter, mm.</summary>
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
