using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Explanations.Reasoning;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Bedside.CourseReports;

/// <summary>Gas exchange over the course, and what may be behind a change.</summary>
internal static class ThinkingBlocks
{
    /// <summary>Samples for which gas exchange is told; earlier ones are counted.</summary>
    public const int MostSamples = 60;

    /// <summary>Gas exchange.</summary>
    public static IEnumerable<ReportBlock> Gases(PatientCourse course, DateTimeOffset now)
    {
        yield return new Heading(2, "Gas exchange");
        GasAnswer[] answers = [.. CourseGases.Of(course, now)];
        yield return answers.Length == 0
            ? new Paragraph("No support runs, so nothing is told for now.")
            : new Table("From the last samples (calculated)", [new("what"), new("answer")], [.. answers.Select(static a => (IReadOnlyList<string>)[a.What, a.Words])]);
        SeriesPoint[] samples = [.. (course.Series.GetValueOrDefault(ObservedQuantity.PreMembraneSaturationPercent)?.Points ?? []).Where(p => p.At <= now)];
        if (answers.Length > 0 && samples.Length > 1)
        {
            int hidden = Math.Max(0, samples.Length - MostSamples);
            yield return new Table(
                $"Over the course, at each sample before the membrane lung{(hidden > 0 ? string.Create(CultureInfo.InvariantCulture, $" (the last {MostSamples}; {hidden} earlier ones are not listed)") : string.Empty)}",
                [new("sample (UTC)", Weight: 1), .. answers.Select(static a => new TableColumn(a.What, Weight: 2))],
                [.. samples.Skip(hidden).Select(p => (IReadOnlyList<string>)[SheetWords.Time(p.At), .. Row(course, p.At + ReadingsAtHand.Together < now ? p.At + ReadingsAtHand.Together : now, answers)])]);
        }
    }

    /// <summary>Explanations.</summary>
    public static IEnumerable<ReportBlock> Causes(PatientCourse course, DateTimeOffset now)
    {
        yield return new Heading(2, "What may be behind a change");
        if (CourseTrend.Of(course, now) is not CourseTrend trend)
        {
            yield return new Paragraph("Cannot be told: no support runs, or nothing was read under it.");
            yield break;
        }

        ExplanationReport report = trend.Report;
        yield return new Paragraph(trend.Change.Sentence);
        yield return new Table(
            "Causes with their odds (calculated; they sum to one)", [new("cause", Weight: 2), new("odds", ColumnAlign.Right, 0.8), new("what happens", Weight: 2.4), new("for it", Weight: 3), new("against it", Weight: 3)],
            [.. report.Explanations.Select(static e => (IReadOnlyList<string>)[
                e.Words, SheetWords.Percent(e.Probability), e.Meaning, string.Join("; ", e.For.Take(3).Select(static s => s.Sentence)), string.Join("; ", e.Against.Take(3).Select(static s => s.Sentence))])]);
        foreach (NextObservation next in new[] { report.Next }.OfType<NextObservation>().Concat(report.Others))
        {
            yield return new Paragraph($"{(next == report.Next ? "Next observation" : "Or")}: {next.Words}. {next.Why}");
        }

        yield return new BulletList(
        [
            .. report.Unexplained,
            report.Missing.IsEmpty ? "Every sign was read." : $"Counted neither way, for want of a reading: {string.Join(", ", report.Missing.Select(static m => m.Words))}.",
            .. report.Notes,
            $"Tables: {report.Version}.",
        ]);
    }

    private static IEnumerable<string> Row(PatientCourse course, DateTimeOffset at, GasAnswer[] columns)
    {
        IReadOnlyList<GasAnswer> then = CourseGases.Of(course, at);
        return columns.Select(c => then.FirstOrDefault(a => a.What == c.What)?.Words ?? "no support then");
    }
}
