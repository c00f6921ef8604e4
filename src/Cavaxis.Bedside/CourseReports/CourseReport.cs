using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Patients;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Bedside.CourseReports;

/// <summary>The full report of a patient's course: everything that stands, with authors and corrections. It orders nothing.</summary>
public static class CourseReport
{
    /// <summary>The report.</summary>
    /// <param name="reading">The course as it was read.</param>
    /// <param name="now">The moment for which it is made.</param>
    /// <returns>The document.</returns>
    public static ReportDocument Of(CourseReading reading, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(reading);
        PatientCourse course = reading.Course;
        IReadOnlyList<ReportBlock> blocks =
        [
            .. Unread(reading),
            .. Support(course, now),
            .. PlanBlocks.Plan(course),
            .. PlanBlocks.RunSheet(course),
            .. CannulaBlocks.Positions(course),
            .. ThinkingBlocks.Causes(course, now),
            .. ThinkingBlocks.Gases(course, now),
            .. WeaningBlocks.Of(course),
            .. LogBlocks.Complications(course),
            .. LogBlocks.Anticoagulation(course),
            .. LogBlocks.Imaging(course),
            .. CannulaBlocks.Removal(course),
            .. LogBlocks.FollowUp(course, now),
            .. LogBlocks.Opinions(course),
            .. LogBlocks.Outcome(course),
            .. ReadingBlocks.Of(course),
            .. TimelineBlocks.Of(reading),
        ];
        string subtitle = string.Create(
            CultureInfo.InvariantCulture,
            $"Patient {reading.Patient} · programme {reading.Programme} · {CourseCase.Words(course)} · made {SheetWords.Time(now)} UTC from {reading.Version} {(reading.Version == 1 ? "entry" : "entries")}. Times are UTC.");
        return new ReportDocument($"Course · {CourseCase.In(course)?.Title ?? "no title"}", subtitle, SheetWords.Caution, blocks);
    }

    private static IEnumerable<ReportBlock> Unread(CourseReading reading)
    {
        int unread = reading.Unread.Count + reading.Spoiled.Count;
        if (unread > 0)
        {
            yield return new Callout(
                CalloutKind.Warning, string.Create(CultureInfo.InvariantCulture, $"{unread} {(unread == 1 ? "entry" : "entries")} of this record could not be read"),
                reading.Spoiled.Count > 0 ? $"Not what was written at places {string.Join(", ", reading.Spoiled)} of the store: run record verify." : "A later version of this program may read them.");
        }
    }

    private static IEnumerable<ReportBlock> Support(PatientCourse course, DateTimeOffset now)
    {
        yield return new Heading(2, "Support");
        if (course.Runs.Count == 0)
        {
            yield return new Paragraph("No start of support is in this record.");
            yield break;
        }

        yield return new Table(
            "Runs of support", [new("begun (UTC)"), new("connected"), new("pump; membrane lung"), new("changes"), new("ended (UTC)"), new("days", ColumnAlign.Right)],
            [.. course.Runs.Select(r => (IReadOnlyList<string>)[
                $"{SheetWords.Time(r.Started.OccurredAt)} by {r.Started.Who}", SheetWords.Configuration(r.Started.Event.Configuration), $"{r.Started.Event.Pump ?? "not told"}; {r.Started.Event.MembraneLung ?? "not told"}",
                string.Join("\n", r.Changes.Select(static c => $"{SheetWords.Time(c.OccurredAt)} {SheetWords.Configuration(c.Event.Configuration)}: {c.Event.Reason}{Parts(c.Event)}")),
                r.Ended is { } ended ? $"{SheetWords.Time(ended.OccurredAt)}: {SheetWords.Name(ended.Event.Reason)}{SheetWords.After(ended.Event.Remark)}" : "runs", SheetWords.Number(Math.Round(r.Lasted(now).TotalDays, 1))])]);
    }

    private static string Parts(Cavaxis.Course.Events.SupportChanged changed) => string.Concat(
        changed.Pump is null ? string.Empty : $"; pump {changed.Pump}", changed.MembraneLung is null ? string.Empty : $"; membrane lung {changed.MembraneLung}");
}
