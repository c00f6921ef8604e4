using Cavaxis.Course.Events;

namespace Cavaxis.Bedside.Courses;

/// <summary>An event that someone wants to write down.</summary>
/// <param name="Event">What happened.</param>
/// <param name="OccurredAt">When it happened; null for now.</param>
/// <param name="Corrects">Number of the entry that it puts right or takes back; null for none.</param>
public sealed record CourseWriting(CourseEvent Event, DateTimeOffset? OccurredAt = null, long? Corrects = null);
