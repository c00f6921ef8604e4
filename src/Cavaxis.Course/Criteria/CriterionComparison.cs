namespace Cavaxis.Course.Criteria;

/// <summary>On which side of its threshold a reading meets a criterion.</summary>
public enum CriterionComparison
{
    /// <summary>The threshold itself meets it.</summary>
    AtLeast,

    /// <summary>The threshold itself does not meet it.</summary>
    Above,

    /// <summary>The threshold itself meets it.</summary>
    AtMost,

    /// <summary>The threshold itself does not meet it.</summary>
    Below,
}
