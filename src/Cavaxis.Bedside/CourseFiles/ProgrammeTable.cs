using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Exports;
using Cavaxis.Bedside.Programmes;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Events;
using Cavaxis.Course.Outcomes;
using Cavaxis.Course.Patients;

namespace Cavaxis.Bedside.CourseFiles;

/// <summary>A patient's course as a row of the programme's table. What counts as known is what counts in the outcomes of the programme; the rest is unknown, never "no".</summary>
public static class ProgrammeTable
{
    /// <summary>The row.</summary>
    /// <param name="reading">The course as it was read.</param>
    /// <param name="now">The present.</param>
    /// <returns>The row.</returns>
    public static ProgrammeRow Of(CourseReading reading, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(reading);
        PatientCourse course = reading.Course;
        SupportRun? last = course.Runs.Count > 0 ? course.Runs[^1] : null;
        ComplicationKind[] seen = [.. course.Complications.Select(static c => c.Seen.Event.Complication)];
        IReadOnlyDictionary<CountedOutcome, bool> outcomes = CourseOutcomes.Of(course, now);
        bool? Known(CountedOutcome kind) => outcomes.TryGetValue(kind, out bool happened) ? happened : null;
        return new ProgrammeRow(
            reading.Patient, last is null ? string.Empty : SheetWords.Configuration(last.Configuration), course.Runs.Count > 0 ? course.Runs[0].Started.OccurredAt : null, last?.Ended?.OccurredAt,
            course.Cannulae.Count, seen.Count(static k => k == ComplicationKind.CannulaMalposition), Known(CountedOutcome.LimbIschaemia), Known(CountedOutcome.VenousThrombosis), [.. seen.Select(SheetWords.Name)],
            Known(CountedOutcome.SurvivedToDischarge));
    }
}
