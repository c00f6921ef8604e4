using System.Text;
using System.Text.Json;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Events;
using Cavaxis.Records.Store;

namespace Cavaxis.Bedside.Courses;

/// <summary>Between the events of the course and those of the record.</summary>
internal static class EventTranslation
{
    private const string OfThePatient = "patient.";

    /// <summary>The kind that comes by the thousand.</summary>
    public static EventKind Observations { get; } = EventKind.Of(CourseEventTable.Of<Observed>().Text);

    /// <summary>A draft for the record.</summary>
    /// <exception cref="InputFaultException">The event has faults.</exception>
    public static EventDraft Draft(CourseWriting writing) => new(
        EventKind.Of(CourseEventTable.Of(writing.Event).Text), CanonicalJson.Of(CourseEventJson.Write(writing.Event)), writing.OccurredAt, writing.Corrects);

    /// <summary>The course that a stream tells.</summary>
    public static CourseReading Reading(string patient, StreamReading stream)
    {
        (IReadOnlyList<CourseEntry> entries, IReadOnlyList<UnreadEntry> unread) = Entries(stream.Events);
        string programme = stream.Events.Where(IsOfThePatient).Select(Programme).LastOrDefault(static p => p is not null) ?? string.Empty;
        long version = stream.Events.Count == 0 ? 0 : stream.Events[^1].Sequence;
        return new CourseReading(patient, programme, version, PatientCourse.Of(entries), unread, stream.Spoiled);
    }

    /// <summary>Entries of recorded events. Admission and transfer are about the patient and not of the course.</summary>
    public static (IReadOnlyList<CourseEntry> Entries, IReadOnlyList<UnreadEntry> Unread) Entries(IEnumerable<RecordedEvent> events)
    {
        List<CourseEntry> entries = [];
        List<UnreadEntry> unread = [];
        foreach (RecordedEvent one in events.Where(static e => !IsOfThePatient(e)))
        {
            try
            {
                CourseEvent happened = CourseEventJson.Read(one.Kind.Text, one.Payload.Bytes.Span);
                entries.Add(new CourseEntry(one.Sequence, one.OccurredAt, one.RecordedAt, one.Who.Text, happened, one.Corrects));
            }
            catch (InputFaultException refused)
            {
                unread.Add(new UnreadEntry(one.Sequence, one.Kind.Text, one.Corrects, refused.Faults));
            }
        }

        return (entries, unread);
    }

    /// <summary>Entries of recorded events that can tell of one quantity: readings that do not name it and correct none are left unread.</summary>
    public static (IReadOnlyList<CourseEntry> Entries, IReadOnlyList<UnreadEntry> Unread) Entries(IEnumerable<RecordedEvent> events, ObservedQuantity quantity)
    {
        byte[] name = Encoding.UTF8.GetBytes($"\"{QuantityTable.Of(quantity).Key}\"");
        return Entries(events.Where(e => e.Corrects is not null || e.Kind != Observations || e.Payload.Bytes.Span.IndexOf(name) >= 0));
    }

    private static bool IsOfThePatient(RecordedEvent one) => one.Kind.Text.StartsWith(OfThePatient, StringComparison.Ordinal);

    private static string? Programme(RecordedEvent one)
    {
        using JsonDocument payload = JsonDocument.Parse(one.Payload.Bytes);
        return payload.RootElement.TryGetProperty("programme", out JsonElement programme) ? programme.GetString() : null;
    }
}
