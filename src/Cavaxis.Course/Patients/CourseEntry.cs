using Cavaxis.Course.Events;

namespace Cavaxis.Course.Patients;

/// <summary>An event as it stands in the record of a patient.</summary>
/// <param name="Sequence">Number in the patient's record, from 1, each once.</param>
/// <param name="OccurredAt">When it happened at the bedside.</param>
/// <param name="RecordedAt">When it was written down.</param>
/// <param name="Who">Name to sign in with of the person who wrote it down.</param>
/// <param name="Event">What happened; for a withdrawal, why the other entry was taken back.</param>
/// <param name="Corrects">Number of the entry that this one puts right or takes back; null for none.</param>
public sealed record CourseEntry(long Sequence, DateTimeOffset OccurredAt, DateTimeOffset RecordedAt, string Who, CourseEvent Event, long? Corrects = null);
