using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>An examination was done.</summary>
public sealed record ImagingDone : CourseEvent
{
    /// <summary>Kind.</summary>
    public required ImagingModality Modality { get; init; }

    /// <summary>What was asked.</summary>
    [Text(EventLimits.Remark)]
    public string? Question { get; init; }

    /// <summary>What was found.</summary>
    [Text(EventLimits.Remark)]
    public required string Finding { get; init; }

    /// <summary>The images.</summary>
    public ImageReference? Image { get; init; }

    /// <summary>True where with this entry the image was taken in and kept beside the record.</summary>
    public bool IsTakenIn { get; init; }

    /// <summary>Fields of the case that were filled with what was measured.</summary>
    [Text(EventLimits.Views)]
    public IReadOnlyList<CaseFieldFilled> IntoCase { get; init; } = [];
}
