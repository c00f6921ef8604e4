using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Bedside.CourseReports;

/// <summary>The timeline: who wrote what when, with what was corrected or taken back.</summary>
internal static class TimelineBlocks
{
    /// <summary>Lines of the timeline; earlier ones are counted and stay in the record.</summary>
    public const int MostLines = 2_000;

    /// <summary>The blocks.</summary>
    public static IEnumerable<ReportBlock> Of(CourseReading reading)
    {
        yield return new Heading(2, "Timeline");
        HashSet<long> imported = [.. reading.Course.All<Observed>().Where(static o => o.Event.Import is not null).Select(static o => o.Sequence)];
        TimelineLine[] lines = [.. reading.Course.Timeline.Where(l => !imported.Contains(l.Sequence))];
        int hidden = Math.Max(0, lines.Length - MostLines);
        if (lines.Length == 0)
        {
            yield return new Paragraph("Nothing was written down by hand.");
        }
        else
        {
            yield return new Table(
                "What happened, as it stands now", [new("happened (UTC)", Weight: 1.3), new("entry", ColumnAlign.Right, 0.6), new("written by, when (UTC)", Weight: 1.3), new("what", Weight: 5)],
                [.. lines.Skip(hidden).Select(static l => (IReadOnlyList<string>)[SheetWords.Time(l.OccurredAt), SheetWords.Number(l.Sequence), $"{l.Who} {SheetWords.Time(l.RecordedAt)}", Words(l)])]);
        }

        if (hidden > 0)
        {
            yield return new Paragraph(string.Create(CultureInfo.InvariantCulture, $"+ {hidden} earlier entries in the record (patient show)."));
        }

        if (imported.Count > 0)
        {
            yield return new Paragraph(string.Create(CultureInfo.InvariantCulture, $"{imported.Count} rows came from files and are listed there, not here."));
        }

        foreach (UnreadEntry unread in reading.Unread)
        {
            yield return new Callout(CalloutKind.Warning, string.Create(CultureInfo.InvariantCulture, $"Entry {unread.Sequence} ({unread.Kind}) cannot be read by this program"), string.Join(" ", unread.Faults));
        }
    }

    private static string Words(TimelineLine line)
    {
        string mark = line.IsWithdrawn ? "TAKEN BACK: " : line.Earlier.Count > 0 ? "CORRECTED: " : string.Empty;
        return $"{mark}{line.Text}{(line.Earlier.Count == 0 ? string.Empty : $"\nSaid before: {string.Join("; ", line.Earlier)}")}";
    }
}
