using Cavaxis.Course.Patients;

namespace Cavaxis.Bedside.Courses;

/// <summary>It is kept.</summary>
/// <param name="Patient">The patient's identifier.</param>
/// <param name="Version">Number of events in the record now.</param>
/// <param name="Entries">The entries as kept.</param>
public sealed record CourseWritten(string Patient, long Version, IReadOnlyList<CourseEntry> Entries) : CourseOutcome;
