namespace Cavaxis.Planning.Case;

/// <summary>How the running circuit is connected.</summary>
public enum RunningConfiguration
{
    /// <summary>Veno-venous through two or more sites.</summary>
    VvTwoSite,

    /// <summary>Veno-venous through one dual-lumen cannula.</summary>
    VvDualLumen,

    /// <summary>Veno-arterial with return to a femoral artery.</summary>
    VaFemoral,

    /// <summary>Veno-arterial with return to an axillary artery.</summary>
    VaAxillary,

    /// <summary>Veno-arterio-venous: return to a femoral artery and to a vein.</summary>
    VavFemoral,
}
