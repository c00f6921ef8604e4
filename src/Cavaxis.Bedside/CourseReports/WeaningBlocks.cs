using System.Globalization;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Criteria;
using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;
using Cavaxis.Course.Weaning;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Bedside.CourseReports;

/// <summary>Every trial of weaning with each criterion.</summary>
internal static class WeaningBlocks
{
    /// <summary>The trials.</summary>
    public static IEnumerable<ReportBlock> Of(PatientCourse course)
    {
        yield return new Heading(2, "Weaning trials");
        if (course.WeaningTrials.Count == 0)
        {
            yield return new Paragraph("None was written down.");
        }

        foreach (ReportBlock block in course.WeaningTrials.SelectMany((t, i) => Trial(TrialJudgement.Of(course, t), i + 1)))
        {
            yield return block;
        }
    }

    private static IEnumerable<ReportBlock> Trial(TrialJudgement trial, int number)
    {
        Logged<WeaningStarted> started = trial.Trial.Started;
        yield return new Heading(3, string.Create(CultureInfo.InvariantCulture, $"Trial {number}, {SheetWords.Time(started.OccurredAt)}: {SheetWords.Name(started.Event.Method)}"));
        yield return new Paragraph(trial.Trial.Ended is { } ended
            ? $"Begun by {started.Who}. Ended {SheetWords.Time(ended.OccurredAt)}: {SheetWords.Name(ended.Event.End)}{SheetWords.After(ended.Event.Reason)}"
            : $"Begun by {started.Who}. No end is written down.");
        yield return new Table(
            "Steps (measured)", [new("read (UTC)"), new("flow (L/min)", ColumnAlign.Right), new("sweep (L/min)", ColumnAlign.Right), new("sweep oxygen", ColumnAlign.Right), new("held (min)", ColumnAlign.Right), new("read"), new("by")],
            [
                [SheetWords.Time(started.OccurredAt), "before", "before", "before", string.Empty, string.Join(", ", started.Event.Readings.Select(TimelineWords.Of)), started.Who],
                .. trial.Trial.Steps.Select(static s => (IReadOnlyList<string>)[
                    SheetWords.Time(s.OccurredAt), Told(s.Event.FlowLPerMin), Told(s.Event.SweepLPerMin), Told(s.Event.SweepOxygenFraction), Told(s.Event.MinutesHeld),
                    $"{string.Join(", ", s.Event.Readings.Select(TimelineWords.Of))}{SheetWords.After(s.Event.Remark)}", s.Who]),
            ]);
        if (trial.Judgement is not WeaningJudgement judgement)
        {
            yield return new Callout(CalloutKind.Caution, "This trial cannot be judged", trial.Trouble ?? string.Empty);
            yield break;
        }

        yield return new Table(
            "Each published criterion", [new("when", Weight: 1), new("criterion", Weight: 2.2), new("published", Weight: 1.2), new("read", Weight: 2), new("verdict", Weight: 1), new("source", Weight: 2.6)],
            [
                .. judgement.Entry.Select(static f => Row("before", f)),
                .. judgement.Success.Select(static f => Row("at the lowest support", f)),
                .. judgement.Stops.Select(static f => Row("stop met", f)),
            ]);
        yield return new Paragraph(judgement.Words);
    }

    private static IReadOnlyList<string> Row(string when, WeaningFinding finding)
    {
        Criterion criterion = finding.Criterion.Criterion;
        string read = finding.Judgement.Observed is { } value ? SheetWords.Value(value, criterion.Unit == "1" ? string.Empty : criterion.Unit, 2) : "nothing";
        return [when, criterion.Words, criterion.Condition, read, $"{SheetWords.Name(finding.Judgement.Verdict)}{(finding.Judgement.WithinError ? ", within its error" : string.Empty)}", criterion.Source.ToString()];
    }

    private static string Told(double? value) => value is double known ? SheetWords.Number(known) : "not told";
}
