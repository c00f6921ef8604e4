namespace Cavaxis.Planning.Rapid;

/// <summary>The kind of emergency, or what is special about the patient in one. Several can hold at once.</summary>
public enum RapidSituation
{
    /// <summary>Arrest out of hospital.</summary>
    ArrestOutOfHospital,

    /// <summary>Arrest in hospital.</summary>
    ArrestInHospital,

    /// <summary>Cardiogenic shock.</summary>
    CardiogenicShock,

    /// <summary>Failure of the lungs.</summary>
    LungFailure,

    /// <summary>Trauma.</summary>
    Trauma,

    /// <summary>Pulmonary embolism.</summary>
    PulmonaryEmbolism,

    /// <summary>Waiting for a transplant.</summary>
    BridgeToTransplant,

    /// <summary>Pregnancy.</summary>
    Pregnancy,

    /// <summary>Obesity.</summary>
    Obesity,

    /// <summary>Under 18 years.</summary>
    Child,

    /// <summary>Cooled through.</summary>
    Hypothermia,
}
