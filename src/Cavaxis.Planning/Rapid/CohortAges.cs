namespace Cavaxis.Planning.Rapid;

/// <summary>Whom a published cohort holds.</summary>
public enum CohortAges
{
    /// <summary>Adults and children.</summary>
    All,

    /// <summary>Adults.</summary>
    Adults,

    /// <summary>Under 18 years.</summary>
    Children,
}
