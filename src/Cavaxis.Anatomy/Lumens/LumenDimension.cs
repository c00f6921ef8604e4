namespace Cavaxis.Anatomy.Lumens;

/// <summary>
/// What the lumen needs beyond the dimensions of the axis. Lengths are told as shares of a dimension of the same patient, so that what is
/// measured there changes them too.
/// </summary>
public enum LumenDimension
{
    /// <summary>Turn of the right brachiocephalic vein away from the line of the SVC, degrees, to the right.</summary>
    RightBrachiocephalicTurn,

    /// <summary>Angle between left brachiocephalic vein and SVC, degrees; 180 is straight on.</summary>
    LeftBrachiocephalicAngle,

    /// <summary>Angle between left jugular and left brachiocephalic vein, degrees; 180 is straight on.</summary>
    LeftJugularAngle,

    /// <summary>Height of the azygos mouth above the SCAJ as a share of the length of the SVC.</summary>
    AzygosHeight,

    /// <summary>Diameter of the azygos arch as a share of that of the SVC.</summary>
    AzygosDiameter,

    /// <summary>Radius of the body of the right atrium as a share of the span of the junctions.</summary>
    AtrialRadius,

    /// <summary>Length of the atrial appendage as a share of the span.</summary>
    AppendageLength,

    /// <summary>Diameter of the atrial appendage as a share of the span.</summary>
    AppendageDiameter,

    /// <summary>From the tricuspid annulus to the apex of the right ventricle as a share of the annulus' diameter.</summary>
    VentricleLength,

    /// <summary>Radius of the middle of the right ventricle as a share of the annulus' diameter.</summary>
    VentricleRadius,

    /// <summary>Dip of the axis of the right ventricle below the horizontal, degrees, towards the apex.</summary>
    VentricleDip,

    /// <summary>Angle between the right hepatic vein and the IVC towards the feet, degrees; 0 runs alongside.</summary>
    HepaticVeinAngle,

    /// <summary>Direction of the right hepatic vein around the IVC: degrees from the patient's right towards the back.</summary>
    HepaticVeinAzimuth,

    /// <summary>Diameter of the right hepatic vein as a share of that of the IVC.</summary>
    HepaticVeinDiameter,

    /// <summary>Angle between IVC and right common iliac vein, degrees; 180 is straight on.</summary>
    RightCavoIliacAngle,

    /// <summary>Angle between IVC and left common iliac vein, degrees; 180 is straight on.</summary>
    LeftCavoIliacAngle,

    /// <summary>Diameter of the common iliac veins as a share of that of the femoral vein of the same side.</summary>
    IliacDiameter,

    /// <summary>Slope of the external iliac veins towards the front, degrees.</summary>
    PelvicSlope,
}
