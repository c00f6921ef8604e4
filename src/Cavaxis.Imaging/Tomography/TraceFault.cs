namespace Cavaxis.Imaging.Tomography;

/// <summary>Why no axis is given.</summary>
public enum TraceFault
{
    /// <summary>A seed lies in air, fat, bone or metal.</summary>
    SeedOutsideLumen,

    /// <summary>The way between the seeds leaves what looks like them.</summary>
    WayLeavesLumen,

    /// <summary>No wall stands out from the noise.</summary>
    NoWall,

    /// <summary>A calibre that no vein has.</summary>
    ImplausibleCalibre,

    /// <summary>The wall is open over too long a way: what lies beside it looks the same.</summary>
    Leak,

    /// <summary>The same way looked for from the other end comes out elsewhere.</summary>
    NotRepeatable,

    /// <summary>Without seeds: no bright column, or more than one.</summary>
    NoColumn,
}
