using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Patients;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Drawings;
using Cavaxis.Reports.OnePage;

namespace Cavaxis.Bedside.Sheets;

/// <summary>
/// The handover sheet of a patient: one A4 page whatever the course holds. The screen shows the same sections with every row; on paper rows that find no room
/// are counted, and it is said where they are. It orders nothing.
/// </summary>
public static class HandoverSheet
{
    private const string Marks = "“…” marks a text cut for room: the full report has it whole. Times are UTC. ± is one standard deviation.";

    /// <summary>The sheet.</summary>
    /// <param name="reading">The course as it was read.</param>
    /// <param name="now">The moment for which it is made.</param>
    /// <returns>The document; its PDF has one page.</returns>
    public static ReportDocument Of(CourseReading reading, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(reading);
        PatientCourse course = reading.Course;
        CourseTrend? trend = CourseTrend.Of(course, now);
        PageSection[] sections =
        [
            SupportSection.Support(course, now),
            SupportSection.Cannulae(course),
            NowSection.Of(course, now),
            StepSection.Of(course),
            ThinkingSections.Causes(trend),
            ThinkingSections.Gases(course, now),
            LogSections.Complications(course),
            LogSections.Anticoagulation(course),
            LogSections.Imaging(course),
            ThinkingSections.Weaning(course),
            LogSections.FollowUp(course, now),
            UnknownSection.Of(reading, trend, now),
        ];
        IReadOnlyList<SmallTrend> trends = LastDay.Of(course, now);
        if (trends.Count == 0)
        {
            sections = [.. sections, new PageSection("Last 24 h", [PageRow.Of("No quantity was read twice, so there is no trend.")])];
        }

        string title = $"Handover · {CourseCase.In(course)?.Title ?? "no title"}";
        string subtitle = string.Create(
            CultureInfo.InvariantCulture,
            $"Patient {reading.Patient} · programme {reading.Programme} · {CourseCase.Words(course)} · made {SheetWords.Time(now)} UTC from {reading.Version} {(reading.Version == 1 ? "entry" : "entries")}");
        return new ReportDocument(title, subtitle, SheetWords.Caution, Blocks(sections, trends))
        {
            OnePage = new PageSheet(title, subtitle, SheetWords.Caution, $"{Marks} Patient {reading.Patient}, page 1 of 1.", sections, LastDay.Title, trends).Draw(),
        };
    }

    private static IReadOnlyList<ReportBlock> Blocks(IReadOnlyList<PageSection> sections, IReadOnlyList<SmallTrend> trends)
    {
        List<ReportBlock> blocks = [];
        foreach (PageSection section in sections)
        {
            blocks.Add(new Heading(2, section.Title));
            if (section.Heads.Count > 0)
            {
                blocks.Add(new Table(section.Title, [.. section.Heads.Select(static h => new TableColumn(h))], [.. section.Rows.Select(static r => r.Cells)]));
            }
            else
            {
                blocks.Add(new BulletList([.. section.Rows.Select(static r => r.Grave ? $"▲ {r.Cells[0]}" : r.Cells[0])]));
            }

            if (section.Besides > 0)
            {
                blocks.Add(new Paragraph(string.Create(CultureInfo.InvariantCulture, $"+ {section.Besides} more in {section.Elsewhere}")));
            }
        }

        if (trends.Count > 0)
        {
            blocks.Add(new Heading(2, LastDay.Title));
            blocks.AddRange(trends.Take(PageSheet.MostTrends).Select(static t => new Figure(new Drawing(90, SmallTrend.HeightMm, t.Title, t.Words, t.Paint(1, 0, 88)), t.Words, t.Words)));
        }

        blocks.Add(new Paragraph("Times are UTC. ± is one standard deviation."));
        return blocks;
    }
}
