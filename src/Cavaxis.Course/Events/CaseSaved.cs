using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>The case of the patient was saved.</summary>
public sealed record CaseSaved : CourseEvent
{
    /// <summary>The whole case file as text.</summary>
    [Text(EventLimits.CaseText)]
    public required string CaseText { get; init; }

    /// <summary>Number of the entry whose case this one was made from; null for the first.</summary>
    [Number(1, int.MaxValue, "1")]
    public int? BasedOn { get; init; }

    /// <summary>What was changed, in words.</summary>
    [Text(EventLimits.Remark)]
    public string? Change { get; init; }
}
