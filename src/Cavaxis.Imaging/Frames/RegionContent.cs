namespace Cavaxis.Imaging.Frames;

/// <summary>What a calibrated region shows: DICOM PS3.3 C.8.5.5.1.2, Region Data Type (0018,6014).</summary>
public enum RegionContent
{
    /// <summary>None or not applicable.</summary>
    None = 0,

    /// <summary>Tissue.</summary>
    Tissue = 1,

    /// <summary>Colour flow.</summary>
    ColourFlow = 2,

    /// <summary>Pulsed-wave spectral Doppler.</summary>
    PulsedWave = 3,

    /// <summary>Continuous-wave spectral Doppler.</summary>
    ContinuousWave = 4,

    /// <summary>Mean trace of a Doppler spectrum.</summary>
    MeanTrace = 5,

    /// <summary>Mode trace of a Doppler spectrum.</summary>
    ModeTrace = 6,

    /// <summary>Trace of the fastest speed of a Doppler spectrum.</summary>
    FastestTrace = 7,

    /// <summary>Trace of a volume over time.</summary>
    VolumeTrace = 8,

    /// <summary>Rate of change of a volume.</summary>
    VolumeRate = 9,

    /// <summary>Electrocardiogram.</summary>
    Electrocardiogram = 10,

    /// <summary>Trace of the pulse.</summary>
    PulseTrace = 11,

    /// <summary>Trace of heart sounds.</summary>
    HeartSounds = 12,

    /// <summary>Grey bar.</summary>
    GreyBar = 13,

    /// <summary>Colour bar.</summary>
    ColourBar = 14,

    /// <summary>Integrated backscatter.</summary>
    Backscatter = 15,

    /// <summary>Trace of an area over time.</summary>
    AreaTrace = 16,

    /// <summary>Rate of change of an area.</summary>
    AreaRate = 17,

    /// <summary>Other.</summary>
    Other = 18,
}
