using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Explanations.Reasoning;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course explain</c>: what changed, what may be behind it with odds, and the next observation that would tell most.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseExplainCommand(CommandOutput output, SecretReader secrets) : CourseCommand<OnePatientSettings>(output, secrets)
{
    private const int MostCauses = 5;

    private protected override Shown Show(CourseReading reading, OnePatientSettings settings, DateTimeOffset now)
    {
        CourseTrend? trend = CourseTrend.Of(reading.Course, now);
        List<string> lines = trend is null
            ? ["Nothing to explain: no support runs, or nothing was read under it in time."]
            : [trend.Change.Sentence, .. trend.Report.Explanations.Take(MostCauses).SelectMany(Cause), .. Next(trend.Report)];
        lines.Add(CourseWords.Caution);
        return new Shown(new { caution = CourseWords.Caution, change = trend?.Change, report = trend?.Report }, lines);
    }

    private static IEnumerable<string> Cause(Explanation one) =>
    [
        $"{one.Words}: {CourseWords.Percent(one.Probability)}, calculated ({one.Sureness}). {one.Meaning}",
        .. one.For.Take(3).Select(static e => $"     for it: {e.Sentence}"),
        .. one.Against.Take(2).Select(static e => $"     against it: {e.Sentence}"),
    ];

    private static IEnumerable<string> Next(ExplanationReport report) =>
    [
        .. report.Unexplained.Select(static u => $"! {u}"),
        report.Next is NextObservation next ? $"Look at next: {next.Words}. {next.Why}" : "Nothing is left to observe that would tell more.",
        .. report.Next?.Answers.Select(static a => $"     {a.Words}: then {string.Join(", ", a.Odds.Take(2).Select(static o => $"{o.Words} {CourseWords.Percent(o.Probability)}"))}") ?? [],
        $"Not observed, so counted neither way: {(report.Missing.IsEmpty ? "nothing" : string.Join(", ", report.Missing.Select(static m => m.Words)))}.",
        .. report.Notes,
        report.Version,
    ];
}
