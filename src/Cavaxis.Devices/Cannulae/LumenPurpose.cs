namespace Cavaxis.Devices.Cannulae;

/// <summary>The direction in which a lumen carries blood.</summary>
public enum LumenPurpose
{
    /// <summary>From the patient to the pump.</summary>
    Drainage,

    /// <summary>From the membrane lung to the patient.</summary>
    Return,
}
