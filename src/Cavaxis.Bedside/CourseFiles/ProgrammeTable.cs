using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Exports;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;

namespace Cavaxis.Bedside.CourseFiles;

/// <summary>A patient's course as a row of the programme's table. What nobody looked at is unknown, never "no".</summary>
public static class ProgrammeTable
{
    /// <summary>The row.</summary>
    /// <param name="reading">The course as it was read.</param>
    /// <returns>The row.</returns>
    public static ProgrammeRow Of(CourseReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        PatientCourse course = reading.Course;
        SupportRun? last = course.Runs.Count > 0 ? course.Runs[^1] : null;
        ComplicationKind[] seen = [.. course.Complications.Select(static c => c.Seen.Event.Complication)];
        return new ProgrammeRow(
            reading.Patient, last is null ? string.Empty : SheetWords.Configuration(last.Configuration), course.Runs.Count > 0 ? course.Runs[0].Started.OccurredAt : null, last?.Ended?.OccurredAt,
            course.Cannulae.Count, seen.Count(static k => k == ComplicationKind.CannulaMalposition), Limb(seen, last), Thrombosis(course, seen), [.. seen.Select(SheetWords.Name)], Survived(course));
    }

    // The log of complications is complete once support has ended; until then none written down is unknown.
    private static bool? Limb(ComplicationKind[] seen, SupportRun? last) => seen.Contains(ComplicationKind.LimbIschaemia) ? true : last?.Ended is null ? null : false;

    private static bool? Thrombosis(PatientCourse course, ComplicationKind[] seen)
    {
        ClotFinding[] looked = [.. course.All<FollowUpFound>().SelectMany(static f => f.Event.Veins).Select(static v => v.Clot).Where(static c => c != ClotFinding.NotSeen)];
        return seen.Contains(ComplicationKind.CannulatedVeinThrombosis) || looked.Any(static c => c is ClotFinding.Partial or ClotFinding.Complete) ? true : looked.Length > 0 ? false : null;
    }

    private static bool? Survived(PatientCourse course)
    {
        OutcomeKind[] outcomes = [.. course.All<OutcomeNoted>().Select(static o => o.Event.Outcome)];
        return outcomes.Any(static o => o is OutcomeKind.DiedOnSupport or OutcomeKind.DiedAfterSupport) ? false
            : outcomes.Any(static o => o is OutcomeKind.SurvivedToDischarge or OutcomeKind.DiedWithin90Days) ? true : null;
    }
}
