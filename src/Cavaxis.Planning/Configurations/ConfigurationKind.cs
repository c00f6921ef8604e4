namespace Cavaxis.Planning.Configurations;

/// <summary>The ways of connecting patient and circuit that are planned.</summary>
public enum ConfigurationKind
{
    /// <summary>Veno-venous: drainage through a femoral vein, return through an internal jugular vein.</summary>
    VvFemoralJugular,

    /// <summary>Veno-venous: drainage through one femoral vein, return through the other.</summary>
    VvFemoralFemoral,

    /// <summary>Veno-venous: one dual-lumen cannula through an internal jugular vein.</summary>
    VvDualLumenJugular,

    /// <summary>Veno-arterial: femoral drainage, femoral arterial return, no cannula for the leg beyond it.</summary>
    VaFemoral,

    /// <summary>Veno-arterial: femoral drainage, femoral arterial return with a distal perfusion cannula.</summary>
    VaFemoralWithDistalPerfusion,

    /// <summary>Veno-arterial: femoral drainage, return into a graft sewn to an axillary artery.</summary>
    VaAxillaryGraft,

    /// <summary>Veno-arterio-venous: femoral drainage, femoral arterial return with distal perfusion and jugular venous return.</summary>
    VavFemoralJugular,
}
