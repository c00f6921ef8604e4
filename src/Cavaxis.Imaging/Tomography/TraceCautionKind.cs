namespace Cavaxis.Imaging.Tomography;

/// <summary>What a person should look at before a traced axis is used, though nothing forbids it.</summary>
public enum TraceCautionKind
{
    /// <summary>A round thing that reads alike runs beside the line, as an artery does beside its vein.</summary>
    NeighbourAlike,

    /// <summary>Bright spots in the wall, as lime in an artery.</summary>
    LimeAtWall,

    /// <summary>No right atrium lies on the line.</summary>
    NoAtrium,

    /// <summary>The vein above the atrium lies far to the left of that below, as a left superior vena cava does.</summary>
    LeftSided,

    /// <summary>What was followed reads like water more than like blood.</summary>
    ReadsLikeFluid,

    /// <summary>The vein narrows within a centimetre, as at a confluence or where contrast fills a part of it.</summary>
    CalibreStep,

    /// <summary>Over a stretch the wall was not seen.</summary>
    OpenStretch,
}
