namespace Cavaxis.Imaging.Echo;

/// <summary>What a place of a scene is filled with.</summary>
public enum Material
{
    /// <summary>Water: no scatter.</summary>
    Water,

    /// <summary>Blood: weak scatter.</summary>
    Blood,

    /// <summary>Soft tissue: the scatter that all others are measured against.</summary>
    Tissue,

    /// <summary>Wall of a vessel.</summary>
    VesselWall,

    /// <summary>Wall of a cannula, polymer alone.</summary>
    Polymer,

    /// <summary>Wall of a cannula where wire is wound into it.</summary>
    WoundPolymer,

    /// <summary>Introducer, polymer.</summary>
    Introducer,

    /// <summary>Steel of a guide wire.</summary>
    Steel,
}
