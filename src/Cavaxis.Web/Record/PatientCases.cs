using System.Collections.Immutable;
using Cavaxis.Course.Events;
using Cavaxis.Records.Events;
using Cavaxis.Records.Store;
using Cavaxis.Web.Shelf;

namespace Cavaxis.Web.Record;

/// <summary>The versions of one patient's case, as far as the patient's events have been read.</summary>
/// <param name="Version">Number of events read.</param>
/// <param name="Notes">One for each version, oldest first, with its place among the patient's events.</param>
/// <param name="Newest">The newest version; null where there is none.</param>
public sealed record PatientCases(long Version, ImmutableList<(VersionNote Note, long Sequence)> Notes, CaseVersion? Newest)
{
    /// <summary>Nothing read yet.</summary>
    public static PatientCases None { get; } = new(0, [], null);

    /// <summary>Kind of the events that hold a version.</summary>
    public static EventKind Kind { get; } = EventKind.Of(CourseEventTable.Of<CaseSaved>().Text);

    /// <summary>With the events that follow.</summary>
    /// <param name="id">The patient.</param>
    /// <param name="reading">Events after <see cref="Version"/>.</param>
    /// <returns>The versions up to there.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">An event does not hold.</exception>
    internal PatientCases With(string id, StreamReading reading)
    {
        if (reading.Spoiled.Count > 0)
        {
            throw RecordFault.Spoiled(reading.Spoiled);
        }

        PatientCases now = this;
        foreach (RecordedEvent one in reading.Events)
        {
            now = now with { Version = one.Sequence };
            if (one.Kind == Kind)
            {
                CaseVersion version = VersionOf(id, now.Notes.Count + 1, one);
                now = now with { Notes = now.Notes.Add((new VersionNote(version.Number, version.SavedAt, version.Change), one.Sequence)), Newest = version };
            }
        }

        return now;
    }

    /// <summary>The version that an event holds.</summary>
    internal static CaseVersion VersionOf(string id, long number, RecordedEvent one)
    {
        CaseSaved saved = (CaseSaved)CourseEventJson.Read(one.Kind.Text, one.Payload.Bytes.Span);
        return new CaseVersion(id, number, one.OccurredAt, saved.Change ?? string.Empty, saved.CaseText);
    }
}
