using Cavaxis.Course.Events;

namespace Cavaxis.Course.Patients;

/// <summary>Puts entries into lines.</summary>
internal static class TimelineFold
{
    /// <summary>One line an entry, by when it happened.</summary>
    /// <param name="entries">Entries with their corrections.</param>
    /// <returns>The lines.</returns>
    public static IReadOnlyList<TimelineLine> Of(IEnumerable<StandingEntry> entries) =>
        [.. entries.Select(Line).OrderBy(static l => l.OccurredAt).ThenBy(static l => l.Sequence)];

    private static TimelineLine Line(StandingEntry entry)
    {
        // A withdrawal says nothing of the course: the line stays where the withdrawn entry stood.
        CourseEntry said = entry.IsWithdrawn ? LastSaid(entry) : entry.Now;
        string text = TimelineWords.Of(said.Event);
        IEnumerable<CourseEntry> earlier = entry.Corrections.Prepend(entry.Original).Where(e => e.Sequence < said.Sequence && e.Event is not EntryWithdrawn);
        return new TimelineLine(
            entry.Sequence,
            said.OccurredAt,
            entry.Now.RecordedAt,
            entry.Now.Who,
            CourseEventTable.Of(said.Event),
            entry.Now.Event is EntryWithdrawn withdrawn ? $"{text} (withdrawn: {withdrawn.Reason})" : text,
            entry.IsWithdrawn,
            [.. earlier.Select(static e => TimelineWords.Of(e.Event))]);
    }

    private static CourseEntry LastSaid(StandingEntry entry) =>
        entry.Corrections.Prepend(entry.Original).LastOrDefault(static e => e.Event is not EntryWithdrawn) ?? entry.Original;
}
