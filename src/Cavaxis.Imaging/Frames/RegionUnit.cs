namespace Cavaxis.Imaging.Frames;

/// <summary>Unit of an axis of a calibrated region: DICOM PS3.3 C.8.5.5.1.15, Physical Units X/Y Direction (0018,6024) and (0018,6026).</summary>
public enum RegionUnit
{
    /// <summary>None or not applicable.</summary>
    None = 0,

    /// <summary>Percent.</summary>
    Percent = 1,

    /// <summary>Decibel.</summary>
    Decibel = 2,

    /// <summary>Centimetre.</summary>
    Centimetre = 3,

    /// <summary>Second.</summary>
    Second = 4,

    /// <summary>Hertz.</summary>
    Hertz = 5,

    /// <summary>Decibel in a second.</summary>
    DecibelPerSecond = 6,

    /// <summary>Centimetre in a second.</summary>
    CentimetrePerSecond = 7,

    /// <summary>Square centimetre.</summary>
    SquareCentimetre = 8,

    /// <summary>Square centimetre in a second.</summary>
    SquareCentimetrePerSecond = 9,

    /// <summary>Cubic centimetre.</summary>
    CubicCentimetre = 10,

    /// <summary>Cubic centimetre in a second.</summary>
    CubicCentimetrePerSecond = 11,

    /// <summary>Degree.</summary>
    Degree = 12,
}
