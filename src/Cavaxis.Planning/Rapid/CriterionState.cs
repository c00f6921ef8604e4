namespace Cavaxis.Planning.Rapid;

/// <summary>Whether a criterion holds for this patient. Unknown is never counted as one or the other.</summary>
public enum CriterionState
{
    /// <summary>It cannot be told from the answers.</summary>
    Unknown,

    /// <summary>It holds.</summary>
    Met,

    /// <summary>It does not hold.</summary>
    NotMet,
}
