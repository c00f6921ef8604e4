namespace Cavaxis.Planning.Rules;

/// <summary>Which direction makes a limit stricter.</summary>
public enum StricterDirection
{
    /// <summary>The number is a target or an assumption, not a limit.</summary>
    Neither,

    /// <summary>Lower is stricter.</summary>
    Lower,

    /// <summary>Higher is stricter.</summary>
    Higher,
}
