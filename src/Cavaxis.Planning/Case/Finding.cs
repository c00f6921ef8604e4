namespace Cavaxis.Planning.Case;

/// <summary>Whether something was looked for and found. Unknown is never treated as absent.</summary>
public enum Finding
{
    /// <summary>Nobody looked, or nobody could tell.</summary>
    Unknown,

    /// <summary>Looked for and not there.</summary>
    Absent,

    /// <summary>There.</summary>
    Present,
}
