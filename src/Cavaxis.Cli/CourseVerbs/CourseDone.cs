namespace Cavaxis.Cli.CourseVerbs;

/// <summary>What was written into a course.</summary>
/// <param name="Patient">Whose.</param>
/// <param name="Version">Version of the record now.</param>
/// <param name="Entries">What was written.</param>
/// <param name="Shown">What the course says afterwards, where the verb shows it; null where it shows nothing more.</param>
public sealed record CourseDone(string Patient, long Version, IReadOnlyList<EntrySheet> Entries, object? Shown);
