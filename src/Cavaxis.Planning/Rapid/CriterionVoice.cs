namespace Cavaxis.Planning.Rapid;

/// <summary>What a criterion says about this patient. No sum of voices is a verdict.</summary>
public enum CriterionVoice
{
    /// <summary>Unknown whether its source would have taken or refused the patient.</summary>
    Open,

    /// <summary>Its source took such patients.</summary>
    For,

    /// <summary>Its source refused such patients, or did not take them.</summary>
    Against,

    /// <summary>Its source would have refused, but the reason does not hold.</summary>
    NoObjection,

    /// <summary>Too early for its source.</summary>
    NotYet,

    /// <summary>To be known; neither for nor against.</summary>
    Aside,
}
