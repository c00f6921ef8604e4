using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Exports;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Events;
using Cavaxis.Course.Outcomes;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Case;

namespace Cavaxis.Bedside.Programmes;

/// <summary>What a course adds to the outcomes of its programme: a case where it is finished, and a line of the programme's table in any case.</summary>
/// <param name="Case">The case as it is counted; null where it is left out.</param>
/// <param name="LeftOut">Why it is left out; null where it is counted.</param>
/// <param name="Row">Its line.</param>
public sealed record CourseCount(ProgrammeCase? Case, LeftOutReason? LeftOut, ProgrammeRow Row)
{
    /// <summary>Counts a course.</summary>
    /// <param name="reading">The course as read.</param>
    /// <param name="now">The present.</param>
    /// <returns>What it adds.</returns>
    public static CourseCount Of(CourseReading reading, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(reading);
        PatientCourse course = reading.Course;
        IReadOnlyDictionary<CountedOutcome, bool> outcomes = CourseOutcomes.Of(course, now);
        CaseFile? file = CourseCase.NewestIn(course);
        LeftOutReason? leftOut = course.Runs.Count == 0 ? LeftOutReason.NotBegun : course.Running is not null ? LeftOutReason.OnSupport : file is null ? LeftOutReason.NoAge : null;
        ProgrammeCase? counted = leftOut is null
            ? new ProgrammeCase(
                reading.Patient, DateOnly.FromDateTime(course.Runs[0].Started.OccurredAt.UtcDateTime), KindOf(course.Runs[0].Started.Event.Configuration, file!.Support.Goal), file.Patient.AgeYears, outcomes)
            : null;
        return new CourseCount(counted, leftOut, RowOf(reading.Patient, course, outcomes));
    }

    private static ProgrammeRow RowOf(string patient, PatientCourse course, IReadOnlyDictionary<CountedOutcome, bool> outcomes) => new(
        patient,
        course.Runs.Count == 0 ? string.Empty : SheetWords.Configuration(course.Runs[0].Started.Event.Configuration),
        course.Runs.Count == 0 ? null : course.Runs[0].Started.OccurredAt,
        course.Runs.Count == 0 ? null : course.Runs[^1].Ended?.OccurredAt,
        course.Cannulae.Count,
        course.Complications.Count(static c => c.Seen.Event.Complication == ComplicationKind.CannulaMalposition),
        Known(outcomes, CountedOutcome.LimbIschaemia),
        Known(outcomes, CountedOutcome.VenousThrombosis),
        [.. course.Complications.Select(static c => $"{SheetWords.Name(c.Seen.Event.Complication)} ({SheetWords.Name(c.Gravity)})")],
        Known(outcomes, CountedOutcome.SurvivedToDischarge));

    private static bool? Known(IReadOnlyDictionary<CountedOutcome, bool> outcomes, CountedOutcome kind) => outcomes.TryGetValue(kind, out bool happened) ? happened : null;

    private static SupportKind KindOf(RunningConfiguration configuration, SupportGoal? goal) => configuration switch
    {
        RunningConfiguration.VvTwoSite or RunningConfiguration.VvDualLumen => SupportKind.VenoVenous,
        RunningConfiguration.VavFemoral => SupportKind.VenoArterialVenous,
        _ when goal == SupportGoal.Arrest => SupportKind.Resuscitation,
        _ => SupportKind.VenoArterial,
    };
}
