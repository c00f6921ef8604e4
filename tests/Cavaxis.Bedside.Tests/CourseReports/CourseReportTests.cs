using Cavaxis.Bedside.CourseReports;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Tests.Sheets;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Html;
using Cavaxis.Reports.Pdf;
using UglyToad.PdfPig;

namespace Cavaxis.Bedside.Tests.CourseReports;

public class CourseReportTests
{
    private static readonly string[] Chapters =
    [
        "Support", "Plan", "Run sheet", "Cannulae and position log", "What may be behind a change", "Gas exchange", "Weaning trials", "Complications", "Anticoagulation", "Imaging", "Removal", "Follow-up",
        "Second opinions", "Outcome", "Readings and trends", "Timeline",
    ];

    [Fact]
    public void An_empty_course_has_every_chapter_and_says_in_each_that_there_is_nothing()
    {
        ReportDocument report = CourseReport.Of(SampleCourses.Empty, SampleCourses.Now);
        Assert.Equal(Chapters, report.Blocks.OfType<Heading>().Where(static h => h.Level == 2).Select(static h => h.Text));
        Assert.Empty(report.Blocks.OfType<Table>());
        Assert.Equal(Chapters.Length, report.Blocks.OfType<Paragraph>().Count());
        using PdfDocument pdf = PdfDocument.Open(PdfWriter.Write(report, SampleCourses.Now));
        Assert.Contains("Nocertifiedmedicaldevice", Bare(pdf.GetPage(1).Text), StringComparison.Ordinal);
    }

    [Fact]
    public void An_ordinary_course_is_told_with_evidence_authors_and_origin()
    {
        ReportDocument report = CourseReport.Of(SampleCourses.Typical, SampleCourses.Now);
        string html = HtmlWriter.Write(report);
        foreach (string part in new[]
        {
            "Femoro-jugular, 25 and 19 Fr", "39 to 43", "HARD STOP: Wire seen in the right atrium.", "Shown by: subcostal long axis", "wire in the atrium", "confirmed by Carl (carl)", "one dilator more, because scarred skin",
            "OPEN HARD STOP", "generic-lung", "tip 0.8 ± 0.4 cm below ICAJ (measured)", "Causes with their odds", "recirculation", "90 % interval", "Oozing at the groin.", "heparin 900 U/h", "both lungs white",
            "pressure before the pump (mmHg)", "by cleo", "carl 2031-02-01", "<svg",
        })
        {
            Assert.Contains(part, html, StringComparison.Ordinal);
        }

        using PdfDocument pdf = PdfDocument.Open(Kept("report-typical", PdfWriter.Write(report, SampleCourses.Now)));
        Assert.All(pdf.GetPages(), static p => Assert.Contains("Nocertifiedmedicaldevice", Bare(p.Text), StringComparison.Ordinal));
        Assert.All(pdf.GetPages().SelectMany(static p => p.Letters), static l =>
        {
            Assert.InRange(l.BoundingBox.Left, 40, 560);
            Assert.InRange(l.BoundingBox.Right, 40, 560);
        });
    }

    [Fact]
    public void What_was_put_right_or_taken_back_stays_to_be_read()
    {
        CourseEntry[] entries =
        [
            new(2, SampleCourses.Start, SampleCourses.Start, "cleo", new Observed { Readings = [Reading.Of(ObservedQuantity.PumpFlowLPerMin, 4)] }),
            new(3, SampleCourses.Start, SampleCourses.Start.AddHours(1), "carl", new Observed { Readings = [Reading.Of(ObservedQuantity.PumpFlowLPerMin, 3)] }, 2),
            new(4, SampleCourses.Start, SampleCourses.Start, "cleo", new NoteWritten { Text = "Someone else" }),
            new(5, SampleCourses.Start, SampleCourses.Start, "carl", new EntryWithdrawn { Reason = "wrong patient" }, 4),
        ];
        string html = HtmlWriter.Write(CourseReport.Of(new CourseReading(SampleCourses.PatientId, "north", 5, PatientCourse.Of(entries), [], []), SampleCourses.Now));
        Assert.Contains("CORRECTED: Pump flow 3 L/min<br>Said before: Pump flow 4 L/min", html, StringComparison.Ordinal);
        Assert.Contains("TAKEN BACK: Someone else (withdrawn: wrong patient)", html, StringComparison.Ordinal);
        Assert.Contains("carl 2031-02-01 05:00", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_criterion_of_a_trial_is_told_with_its_source_and_verdict()
    {
        DateTimeOffset begun = SampleCourses.Start;
        CourseReading reading = SampleCourses.Read(
        [
            (begun, new WeaningStarted { Method = WeaningMethod.FlowSteps, Readings = [Reading.Of(ObservedQuantity.PumpFlowLPerMin, 4), Reading.Of(ObservedQuantity.MeanArterialPressureMmHg, 75)] }),
            (begun.AddMinutes(15), new WeaningStepped { TrialEntry = 2, FlowLPerMin = 1.2, MinutesHeld = 15, Readings = [Reading.Of(ObservedQuantity.OutflowVtiCm, 12), Reading.Of(ObservedQuantity.EjectionFractionPercent, 15)] }),
            (begun.AddMinutes(20), new WeaningEnded { TrialEntry = 2, End = WeaningEnd.Completed, FlowLPerMin = 3.5 }),
        ]);
        Table criteria = CourseReport.Of(reading, SampleCourses.Now).Blocks.OfType<Table>().Single(static t => t.Caption == "Each published criterion");
        Assert.Contains(criteria.Rows, static r => r[1].Contains("velocity-time integral", StringComparison.Ordinal) && r[2] == "at least 10 cm" && r[4].StartsWith("met", StringComparison.Ordinal) && r[5].Contains("Aissaoui", StringComparison.Ordinal));
        Assert.Contains(criteria.Rows, static r => r[1].Contains("ejection fraction", StringComparison.Ordinal) && r[4].StartsWith("not met", StringComparison.Ordinal));
        Assert.Contains(criteria.Rows, static r => r[3] == "nothing" && r[4] == "not measured");
    }

    [Fact]
    public void A_course_of_thousands_of_readings_is_told_within_its_bounds()
    {
        ReportDocument report = CourseReport.Of(SampleCourses.Overfull, SampleCourses.Now);
        Table hand = report.Blocks.OfType<Table>().Single(static t => t.Caption == "Readings written by hand");
        Assert.Equal(1_000, hand.Rows.Count);
        Assert.Contains(report.Blocks.OfType<Paragraph>(), static p => p.Text.StartsWith("+ ", StringComparison.Ordinal) && p.Text.EndsWith("earlier readings in the record (patient show).", StringComparison.Ordinal));
        Assert.Contains(report.Blocks.OfType<Callout>(), static c => c.Title == "2 entries of this record could not be read");
        Assert.Equal(QuantityTable.All.Count, report.Blocks.OfType<Table>().Single(static t => t.Caption.StartsWith("Each quantity", StringComparison.Ordinal)).Rows.Count);
        Assert.DoesNotContain("<script", HtmlWriter.Write(report), StringComparison.OrdinalIgnoreCase);
        Assert.NotEmpty(PdfWriter.Write(report, SampleCourses.Now));
    }

    private static byte[] Kept(string name, byte[] bytes)
    {
        if (Environment.GetEnvironmentVariable("CAVAXIS_KEEP_SHEETS") is string folder)
        {
            File.WriteAllBytes(Path.Combine(folder, $"{name}.pdf"), bytes);
        }

        return bytes;
    }

    private static string Bare(string words) => string.Concat(words.Where(static c => !char.IsWhiteSpace(c)))
        .Replace("\uFB01", "fi", StringComparison.Ordinal).Replace("\uFB02", "fl", StringComparison.Ordinal);
}
