namespace Cavaxis.Imaging.Echo;

/// <summary>What lies about a device.</summary>
public enum SurroundingsKind
{
    /// <summary>A bath of water.</summary>
    WaterBath,

    /// <summary>A vessel full of blood in tissue.</summary>
    Vessel,

    /// <summary>Tissue alone: a block for tests of a probe.</summary>
    Tissue,
}
