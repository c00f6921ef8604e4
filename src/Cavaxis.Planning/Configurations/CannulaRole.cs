namespace Cavaxis.Planning.Configurations;

/// <summary>What a cannula does in a configuration.</summary>
public enum CannulaRole
{
    /// <summary>Takes venous blood to the pump.</summary>
    Drainage,

    /// <summary>Gives blood back into a vein or the right atrium.</summary>
    VenousReturn,

    /// <summary>Gives blood back into an artery.</summary>
    ArterialReturn,

    /// <summary>Drains and returns through one cannula.</summary>
    DualLumen,

    /// <summary>Feeds the leg beyond an arterial return cannula.</summary>
    DistalPerfusion,
}
