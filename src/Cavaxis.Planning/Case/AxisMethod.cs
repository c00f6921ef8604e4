namespace Cavaxis.Planning.Case;

/// <summary>How an axis measurement was taken.</summary>
public enum AxisMethod
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Computed tomography.</summary>
    Ct,

    /// <summary>Magnetic resonance.</summary>
    Mri,

    /// <summary>Transoesophageal ultrasound.</summary>
    TransoesophagealEcho,

    /// <summary>Transthoracic ultrasound.</summary>
    TransthoracicEcho,

    /// <summary>Fluoroscopy with a scale.</summary>
    Fluoroscopy,

    /// <summary>A tape on the skin.</summary>
    SurfaceTape,

    /// <summary>A wire of known length.</summary>
    WireLength,
}
