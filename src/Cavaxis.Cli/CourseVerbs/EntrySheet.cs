using System.Text.Json;
using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>An entry of a course as it is printed.</summary>
/// <param name="Entry">Its number.</param>
/// <param name="Kind">What kind it is.</param>
/// <param name="OccurredAt">When it happened.</param>
/// <param name="RecordedAt">When it was written down.</param>
/// <param name="Who">Who wrote it down.</param>
/// <param name="Text">What happened, in words with units.</param>
/// <param name="Corrects">Number of the entry that it puts right or takes back; null for none.</param>
/// <param name="Event">The particulars.</param>
public sealed record EntrySheet(long Entry, string Kind, DateTimeOffset OccurredAt, DateTimeOffset RecordedAt, string Who, string Text, long? Corrects, JsonElement Event)
{
    /// <summary>Of an entry.</summary>
    /// <param name="one">The entry.</param>
    /// <returns>The same for people and programs.</returns>
    public static EntrySheet Of(CourseEntry one)
    {
        ArgumentNullException.ThrowIfNull(one);
        using JsonDocument particulars = JsonDocument.Parse(CourseEventJson.Write(one.Event));
        return new(one.Sequence, CourseEventTable.Of(one.Event).Text, one.OccurredAt, one.RecordedAt, one.Who, TimelineWords.Of(one.Event), one.Corrects, particulars.RootElement.Clone());
    }
}
