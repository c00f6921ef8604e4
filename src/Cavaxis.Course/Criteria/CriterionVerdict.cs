namespace Cavaxis.Course.Criteria;

/// <summary>What a reading says about a criterion. What was not measured is never met.</summary>
public enum CriterionVerdict
{
    /// <summary>The reading lies on the side that the criterion asks for.</summary>
    Met,

    /// <summary>The reading lies on the other side.</summary>
    NotMet,

    /// <summary>There is no reading.</summary>
    NotMeasured,
}
