namespace Cavaxis.Course.Events;

/// <summary>Kind of an examination.</summary>
public enum ImagingModality
{
    /// <summary>Vascular ultrasound.</summary>
    VascularUltrasound,

    /// <summary>Transthoracic ultrasound.</summary>
    TransthoracicUltrasound,

    /// <summary>Transoesophageal ultrasound.</summary>
    TransoesophagealUltrasound,

    /// <summary>Ultrasound of the lungs.</summary>
    LungUltrasound,

    /// <summary>Fluoroscopy.</summary>
    Fluoroscopy,

    /// <summary>Plain film.</summary>
    PlainFilm,

    /// <summary>Computed tomography.</summary>
    ComputedTomography,

    /// <summary>Magnetic resonance.</summary>
    MagneticResonance,

    /// <summary>Angiography.</summary>
    Angiography,

    /// <summary>Another, told in the question.</summary>
    Other,
}
