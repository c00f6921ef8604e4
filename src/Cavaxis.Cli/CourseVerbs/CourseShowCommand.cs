using System.ComponentModel;
using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Course.FollowUp;
using Cavaxis.Course.Patients;
using Cavaxis.Course.Positions;
using Cavaxis.Planning.Plans;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course show</c>: how a patient is now, and what happened.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseShowCommand(CommandOutput output, SecretReader secrets) : CourseCommand<CourseShowCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course show</c> takes.</summary>
    public sealed class Settings : OnePatientSettings
    {
        /// <summary>How many lines of what happened.</summary>
        [CommandOption("--lines <COUNT>")]
        [Description("How many of the last entries are listed for people, 0 to 100000 [[30]]; JSON has them all.")]
        public string Lines { get; init; } = "30";
    }

    private protected override Shown Show(CourseReading reading, Settings settings, DateTimeOffset now)
    {
        int most = OptionText.Whole(settings.Lines, "--lines", 0, 100_000);
        PatientCourse course = reading.Course;
        ReadingAtHand[] last = [.. course.Series.Values.OrderBy(static s => s.Quantity).Select(static s => ReadingAtHand.Of(s.Quantity, s.Last))];
        DueItem[] open = [.. FollowUpPlan.Of(course).Where(static d => d.Done is null)];
        ComplicationLog[] complications = [.. course.Complications.Where(static c => c.Ended is null)];
        PositionReview[] positions = [.. course.CannulaeIn.Select(PositionReview.Of)];
        Shown? sheet = SheetOfSteps.Of(course);
        List<string> lines =
        [
            string.Create(CultureInfo.InvariantCulture, $"Patient {reading.Patient}, programme {reading.Programme}, version {reading.Version}."),
            Support(course, now),
            .. PositionSheet.Of(course.CannulaeIn).Lines.SkipLast(1),
            .. sheet?.Lines ?? ["No plan was chosen."],
            .. complications.Select(static c => string.Create(CultureInfo.InvariantCulture, $"Open complication, entry {c.Seen.Sequence}: {TimelineWords.Of(c.Seen.Event)}")),
            .. open.Select(i => $"Follow-up {FollowUpSheet.Line(i, now)}"),
            last.Length == 0 ? "Nothing was read yet." : "Last readings",
            .. last.Select(static r => $"  {CourseWords.Of(r)}"),
            "What happened",
            .. course.Timeline.TakeLast(most).Select(Line),
            .. course.Timeline.Count > most ? [string.Create(CultureInfo.InvariantCulture, $"  and {course.Timeline.Count - most} entries before.")] : Array.Empty<string>(),
            CourseWords.Caution,
        ];
        return new Shown(
            new
            {
                caution = CourseWords.Caution,
                patient = reading.Patient,
                programme = reading.Programme,
                version = reading.Version,
                unread = reading.Unread,
                spoiled = reading.Spoiled,
                running = course.Running,
                runs = course.Runs.Count,
                cannulae = positions,
                runSheet = sheet?.Json,
                openComplications = complications,
                outcome = course.Outcome,
                openFollowUp = open.Select(i => new { state = i.At(now), item = i }).ToArray(),
                lastReadings = last,
                timeline = course.Timeline.Select(static l => new { entry = l.Sequence, kind = l.Kind.Text, l.OccurredAt, l.RecordedAt, l.Who, l.Text, l.IsWithdrawn, l.Earlier }).ToArray(),
            },
            lines);
    }

    private static string Support(PatientCourse course, DateTimeOffset now)
    {
        if (course.Running is SupportRun run)
        {
            return string.Create(
                CultureInfo.InvariantCulture, $"On support: {TimelineWords.Of(new SupportStarted { Configuration = run.Configuration })}, since {CourseWords.Time(run.Started.OccurredAt)}, day {(int)run.Lasted(now).TotalDays + 1}.");
        }

        string outcome = course.Outcome is { } noted ? $" {TimelineWords.Of(noted.Event)} ({CourseWords.Time(noted.OccurredAt)})." : string.Empty;
        return course.Runs.Count == 0 ? $"Not on support; none was written down.{outcome}" : $"Support ended {CourseWords.Time(course.Runs[^1].Ended!.OccurredAt)}, {PlainWords.FromName(course.Runs[^1].Ended!.Event.Reason.ToString())}.{outcome}";
    }

    private static string Line(TimelineLine line)
    {
        string before = line.Earlier.Count == 0 ? string.Empty : $" (said before: {string.Join("; ", line.Earlier)})";
        return string.Create(CultureInfo.InvariantCulture, $"  {line.Sequence}  {CourseWords.Time(line.OccurredAt)}  {line.Who}  {(line.IsWithdrawn ? "WITHDRAWN " : string.Empty)}{line.Text}{before}");
    }
}
