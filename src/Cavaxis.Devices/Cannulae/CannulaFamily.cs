namespace Cavaxis.Devices.Cannulae;

/// <summary>Generic families of cannulae, named by what they do.</summary>
public enum CannulaFamily
{
    /// <summary>Venous drainage through an end hole and side holes close to the tip.</summary>
    SingleStageDrainage,

    /// <summary>Venous drainage through several groups of side holes spread along the body.</summary>
    MultiStageDrainage,

    /// <summary>Return into a great vein or the right atrium.</summary>
    VenousReturn,

    /// <summary>Return into an artery, or into a graft sewn to an artery.</summary>
    ArterialReturn,

    /// <summary>One cannula that drains both caval veins and returns towards the tricuspid valve.</summary>
    BicavalDualLumen,

    /// <summary>One cannula that drains and returns in the right atrium.</summary>
    AtrialDualLumen,

    /// <summary>Small arterial cannula that feeds the leg beyond an arterial return cannula.</summary>
    DistalPerfusion,
}
