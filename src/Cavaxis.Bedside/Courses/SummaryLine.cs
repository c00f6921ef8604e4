using System.Globalization;
using System.Text;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Courses;

/// <summary>A patient in one line.</summary>
internal static class SummaryLine
{
    /// <summary>The summary.</summary>
    /// <param name="reading">The course.</param>
    /// <param name="now">The time for which days on support are counted.</param>
    public static PatientSummary Of(CourseReading reading, DateTimeOffset now)
    {
        PatientCourse course = reading.Course;
        CaseFile? file = CaseIn(course);
        TimelineLine? last = course.Timeline.LastOrDefault(static l => !l.IsWithdrawn);
        int open = course.Complications.Count(static c => c.Ended is null);
        string[] parts =
        [
            file?.Title ?? "(no title)",
            .. file is null ? Array.Empty<string>() : [string.Create(CultureInfo.InvariantCulture, $"{file.Patient.AgeYears:0.#} years, {PlainWords.FromName(file.Patient.Sex.ToString())}")],
            Support(course, now),
            .. open == 0 ? Array.Empty<string>() : [string.Create(CultureInfo.InvariantCulture, $"{open} open {(open == 1 ? "complication" : "complications")}")],
            .. reading.Unread.Count + reading.Spoiled.Count == 0 ? Array.Empty<string>() : ["not everything in this record could be read"],
        ];
        return new PatientSummary(reading.Patient, file?.Title, file?.Invented ?? false, course.Running, last, open, reading.Version, string.Join(" · ", parts));
    }

    private static string Support(PatientCourse course, DateTimeOffset now)
    {
        if (course.Running is SupportRun run)
        {
            return string.Create(CultureInfo.InvariantCulture, $"on support, day {(int)run.Lasted(now).TotalDays + 1}");
        }

        return course.Outcome is { } outcome ? PlainWords.FromName(outcome.Event.Outcome.ToString()) : course.Runs.Count > 0 ? "support ended" : "not on support";
    }

    private static CaseFile? CaseIn(PatientCourse course)
    {
        try
        {
            return course.Case is { } saved ? CaseFileReader.Read(Encoding.UTF8.GetBytes(saved.Event.CaseText)) : null;
        }
        catch (InputFaultException)
        {
            // A case that is being written may be saved with faults; the list then goes without its title.
            return null;
        }
    }
}
