using Cavaxis.Course.Patients;

namespace Cavaxis.Bedside.Courses;

/// <summary>A patient's course as it was read from the record, with what could not be read.</summary>
/// <param name="Patient">The patient's identifier.</param>
/// <param name="Programme">The programme of the patient.</param>
/// <param name="Version">Number of events in the record; goes back with whatever is written on the strength of this reading.</param>
/// <param name="Course">The course.</param>
/// <param name="Unread">Entries that this program cannot read. They are in the record, and must be told to the reader.</param>
/// <param name="Spoiled">Places in the store of events whose contents are not those that were hashed. They are not given, and must be told to the reader.</param>
public sealed record CourseReading(
    string Patient, string Programme, long Version, PatientCourse Course, IReadOnlyList<UnreadEntry> Unread, IReadOnlyList<long> Spoiled);
