using Cavaxis.Course.Patients;

namespace Cavaxis.Bedside.Courses;

/// <summary>Nothing was kept: others wrote first. Whoever wrote looks at what they wrote, and writes again with the new version.</summary>
/// <param name="Version">Number of events in the record now.</param>
/// <param name="Meanwhile">What the others wrote.</param>
/// <param name="Lines">The same in words.</param>
public sealed record CourseConflict(long Version, IReadOnlyList<CourseEntry> Meanwhile, IReadOnlyList<TimelineLine> Lines) : CourseOutcome;
