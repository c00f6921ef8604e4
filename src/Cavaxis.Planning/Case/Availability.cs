namespace Cavaxis.Planning.Case;

/// <summary>Whether a means is at hand for this procedure.</summary>
public enum Availability
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Not at hand.</summary>
    Missing,

    /// <summary>At hand, with someone who can use it.</summary>
    OnHand,
}
