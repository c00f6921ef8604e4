using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Events;
using Cavaxis.Course.Explanations.Reasoning;
using Cavaxis.Course.Patients;
using Cavaxis.Reports.OnePage;

namespace Cavaxis.Bedside.Sheets;

/// <summary>What may be behind a change, what the gases tell, and how weaning stands.</summary>
internal static class ThinkingSections
{
    /// <summary>What may be behind a change, with odds and the next observation.</summary>
    public static PageSection Causes(CourseTrend? trend)
    {
        const string Title = "What may be behind a change (odds are calculated)";
        if (trend is null)
        {
            return new PageSection(Title, [PageRow.Of("Cannot be told: no support runs, or nothing was read under it.")]);
        }

        List<PageRow> rows = [PageRow.Of(trend.Change.Sentence)];
        if (trend.Report.Next is NextObservation next)
        {
            rows.Add(PageRow.Of($"Next observation: {next.Words}. {next.Why}"));
        }

        rows.AddRange(trend.Report.Explanations.Take(3).Select(static e => PageRow.Of(
            $"{SheetWords.Percent(e.Probability)} {e.Words}{(e.For.Length > 0 ? $". For it: {e.For[0].Sentence}" : string.Empty)}{(e.Against.Length > 0 ? $". Against it: {e.Against[0].Sentence}" : string.Empty)}")));
        rows.AddRange(trend.Report.Unexplained.Select(static u => PageRow.Of(u)));
        return new PageSection(Title, rows) { Least = 4, Elsewhere = "the full report, explanations" };
    }

    /// <summary>What recirculation, effective flow and delivery are, or that they cannot be told.</summary>
    public static PageSection Gases(PatientCourse course, DateTimeOffset now)
    {
        PageRow[] rows = [.. CourseGases.Of(course, now).Select(static a => PageRow.Of($"{a.What}: {a.Words}"))];
        return new PageSection("Gas exchange from the last samples", rows.Length == 0 ? [PageRow.Of("No support runs.")] : rows) { Least = 4 };
    }

    /// <summary>The last trial of weaning.</summary>
    public static PageSection Weaning(PatientCourse course)
    {
        IReadOnlyList<WeaningTrialLog> trials = course.WeaningTrials;
        if (trials.Count == 0)
        {
            return new PageSection("Weaning", [PageRow.Of("No trial was written down.")]);
        }

        TrialJudgement last = TrialJudgement.Of(course, trials[^1]);
        string end = last.Trial.Ended is { } ended ? $"{SheetWords.Name(ended.Event.End)} {SheetWords.Short(ended.OccurredAt)}{SheetWords.After(ended.Event.Reason)}" : "GOES ON";
        return new PageSection("Weaning",
        [
            PageRow.Of($"Last trial {SheetWords.Short(last.Trial.Started.OccurredAt)}, {SheetWords.Name(last.Trial.Started.Event.Method)}, {last.Trial.Steps.Count} steps, {end}", last.Trial.Ended is null),
            PageRow.Of(last.Judgement?.Words ?? $"Cannot be judged: {last.Trouble}."),
        ])
        {
            Besides = trials.Count - 1, Elsewhere = "the full report, weaning",
        };
    }
}
