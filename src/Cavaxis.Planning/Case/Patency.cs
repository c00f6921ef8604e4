namespace Cavaxis.Planning.Case;

/// <summary>Whether a vessel is open.</summary>
public enum Patency
{
    /// <summary>Not assessed.</summary>
    Unknown,

    /// <summary>Open along the part that was seen.</summary>
    Patent,

    /// <summary>Narrowed.</summary>
    Narrowed,

    /// <summary>Closed.</summary>
    Occluded,
}
