namespace Cavaxis.Imaging.Frames;

/// <summary>What the two axes of a calibrated region stand for: DICOM PS3.3 C.8.5.5.1.1, Region Spatial Format (0018,6012).</summary>
public enum RegionFormat
{
    /// <summary>None or not applicable.</summary>
    None = 0,

    /// <summary>Two-dimensional picture of tissue or of flow.</summary>
    TwoDimensional = 1,

    /// <summary>Motion along one line over time.</summary>
    Motion = 2,

    /// <summary>Spectral Doppler: speed over time.</summary>
    Spectral = 3,

    /// <summary>A wave over time, such as the electrocardiogram.</summary>
    Wave = 4,

    /// <summary>Graphics.</summary>
    Graphics = 5,
}
