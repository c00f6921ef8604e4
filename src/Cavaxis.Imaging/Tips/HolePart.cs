namespace Cavaxis.Imaging.Tips;

/// <summary>Which point of a group of holes was seen.</summary>
public enum HolePart
{
    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>The hole nearest the hub.</summary>
    NearestHub,

    /// <summary>The hole nearest the tip.</summary>
    NearestTip,
}
