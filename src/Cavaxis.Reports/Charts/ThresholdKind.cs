namespace Cavaxis.Reports.Charts;

/// <summary>What a threshold line means; it sets line style and sign, never colour alone.</summary>
public enum ThresholdKind
{
    /// <summary>Not to be passed.</summary>
    Limit,

    /// <summary>To be watched.</summary>
    Caution,

    /// <summary>To be reached.</summary>
    Target,
}
