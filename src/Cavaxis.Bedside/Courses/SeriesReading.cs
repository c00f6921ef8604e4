using Cavaxis.Course.Patients;

namespace Cavaxis.Bedside.Courses;

/// <summary>The readings of one quantity in a stretch of time, read without the rest of the course.</summary>
/// <param name="Points">The readings that stand, oldest first.</param>
/// <param name="Unread">Entries on the way that this program cannot read; must be told to the reader.</param>
/// <param name="Spoiled">Places in the store of events whose contents are not those that were hashed; must be told to the reader.</param>
public sealed record SeriesReading(IReadOnlyList<SeriesPoint> Points, IReadOnlyList<UnreadEntry> Unread, IReadOnlyList<long> Spoiled);
