using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>A note.</summary>
public sealed record NoteWritten : CourseEvent
{
    /// <summary>The note.</summary>
    [Text(EventLimits.Note)]
    public required string Text { get; init; }
}
