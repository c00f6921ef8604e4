using System.Text.RegularExpressions;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Sheets;
using Cavaxis.Course.Events;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Drawings;
using Cavaxis.Reports.Html;
using Cavaxis.Reports.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Cavaxis.Bedside.Tests.Sheets;

public partial class HandoverSheetTests
{
    private const double EdgePt = 25;

    public static TheoryData<string> Courses => ["empty", "typical", "overfull"];

    [Theory]
    [MemberData(nameof(Courses))]
    public void The_paper_has_one_A4_page_with_every_section_and_the_caution(string name)
    {
        using PdfDocument pdf = Opened(name);
        Page page = Assert.Single(pdf.GetPages());
        Assert.Equal(210 / 25.4 * 72, page.Width, 0.1);
        Assert.Equal(297 / 25.4 * 72, page.Height, 0.1);
        string words = Bare(page.Text);
        foreach (string part in new[]
        {
            "Handover", SampleCourses.PatientId, "north", "Nocertifiedmedicaldevice", "localprotocol", "licensedpractice", "instructionsforuse", "imaging", "Support", "Cannulae", "Whatrunsnow", "Procedure",
            "Whatmaybebehindachange", "Gasexchange", "Complications", "Anticoagulation", "Imaging", "Weaning", "Follow-updue", "Notknown", "Last24h", "page1of1", "UTC",
        })
        {
            Assert.Contains(part, words, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Courses))]
    public void No_letter_is_clipped_and_no_two_words_lie_on_each_other(string name)
    {
        using PdfDocument pdf = Opened(name);
        Page page = pdf.GetPage(1);
        Letter[] letters = [.. page.Letters.Where(static l => !string.IsNullOrWhiteSpace(l.Value))];
        Assert.NotEmpty(letters);
        Assert.All(letters, l =>
        {
            Assert.InRange(l.BoundingBox.Left, EdgePt, page.Width - EdgePt);
            Assert.InRange(l.BoundingBox.Right, EdgePt, page.Width - EdgePt);
            Assert.InRange(l.BoundingBox.Bottom, EdgePt - 5, page.Height - EdgePt);
        });

        // Letters of one line stand beside each other; those of two lines may touch, and no more than a tenth of a letter.
        for (int i = 0; i < letters.Length; i++)
        {
            var a = letters[i].BoundingBox;
            for (int j = i + 1; j < letters.Length; j++)
            {
                var b = letters[j].BoundingBox;
                double across = Math.Min(a.Right, b.Right) - Math.Max(a.Left, b.Left);
                double up = Math.Min(a.Top, b.Top) - Math.Max(a.Bottom, b.Bottom);
                if (across > 0.6 && up > 0.6)
                {
                    Assert.Fail($"{letters[i].Value} at {a} and {letters[j].Value} at {b}");
                }
            }
        }
    }

    [Fact]
    public void The_drawing_of_the_page_keeps_every_text_apart_from_the_others_by_their_widths()
    {
        foreach (string name in Courses)
        {
            Drawing drawing = Sheet(name).OnePage!;
            Text[] texts = [.. drawing.Items.OfType<Text>()];
            Box[] boxes = [.. texts.Select(TextMetrics.BoundsOf)];
            Box page = new(8, 8, drawing.WidthMm - 8, drawing.HeightMm - 8);
            for (int i = 0; i < boxes.Length; i++)
            {
                Assert.True(page.Holds(boxes[i]), $"{name}: {texts[i].Content}");
                for (int j = i + 1; j < boxes.Length; j++)
                {
                    if (boxes[i].Overlaps(boxes[j], 0.35))
                    {
                        Assert.Fail($"{name}: \"{texts[i].Content}\" and \"{texts[j].Content}\"");
                    }
                }
            }
        }
    }

    [Fact]
    public void An_ordinary_course_is_told_whole()
    {
        using PdfDocument pdf = Opened("typical");
        string words = Bare(pdf.GetPage(1).Text);
        foreach (string part in new[]
        {
            "Invented course", "INVENTED case", "Day 4 of support", "veno-venous, two sites", "generic-pump", "generic-lung",
            "drainage (drainage): right common femoral vein, 25 Fr, 41 cm at the skin (02-01 03:50); last confirmed 02-01 03:50 by transthoracic ultrasound", "tip 0.8 ± 0.4 cm below ICAJ (measured)",
            "NEVER CONFIRMED by an image", "3.24 ± 0.1 L/min", "02-04 05:36", "−134 ± 8 mmHg", "pressure drop over the membrane lung", "30 ± 11.3 mmHg", "calculated",
            "HARD STOP open, needs: Tip seen below the right atrium.", "one dilator more, because scarred skin", "cannulation site bleeding, right, watched, OPEN", "heparin 900 U/h", "52 ± 3 s",
            "plain film: Return cannula as planned", "No trial was written down.", "the schedule begins when a cannula is taken out", "Next observation", "recirculation:", "effective flow:", "DO2:VO2: at most",
        })
        {
            string wanted = part == "52 ± 3 s" ? "activated partial thromboplastin time 52 s" : part;
            Assert.Contains(Bare(wanted), words, StringComparison.Ordinal);
        }

        // Nothing of it is cut but the long list of signs that were not read; what is left out are the four quantities that the sheet does not ask for, and trends beyond eight.
        string[] texts = [.. Sheet("typical").OnePage!.Items.OfType<Text>().Select(static t => t.Content)];
        Assert.InRange(texts.Count(static t => t.EndsWith(" …", StringComparison.Ordinal)), 0, 1);
        Assert.Equal("+ 4 more in the full report, readings", Assert.Single(texts, static t => t.StartsWith("+ ", StringComparison.Ordinal)));
    }

    [Fact]
    public void Where_a_page_is_too_small_it_says_how_many_are_left_out_and_where_they_are()
    {
        ReportDocument sheet = Sheet("overfull");
        string[] texts = [.. sheet.OnePage!.Items.OfType<Text>().Select(static t => t.Content)];
        string[] more = [.. texts.Where(static t => t.StartsWith("+ ", StringComparison.Ordinal))];
        Assert.Contains(more, static m => m.EndsWith("more in the full report, complications", StringComparison.Ordinal));
        Assert.Contains(more, static m => m.EndsWith("more in the full report, run sheet", StringComparison.Ordinal));
        Assert.Contains(more, static m => m.EndsWith("more in the full report, readings", StringComparison.Ordinal));
        Assert.Contains(texts, static t => t.Contains("more in the full report", StringComparison.Ordinal) && t.StartsWith("Last 24 h", StringComparison.Ordinal));
        Assert.Contains(texts, static t => t.Contains("2 entries of this record could not be read", StringComparison.Ordinal));

        // Ten complications are in the course: those that stand and those that are counted make ten.
        int stand = sheet.Blocks.SkipWhile(static b => b is not Heading { Text: "Complications" }).OfType<BulletList>().First().Items.Count;
        Assert.Equal(10, stand);
        Match counted = Count().Match(more.Single(static m => m.EndsWith("complications", StringComparison.Ordinal)));
        int drawn = texts.Count(static t => t.Contains("lifethreatening", StringComparison.OrdinalIgnoreCase) || t.Contains("life threatening", StringComparison.Ordinal) || t.Contains("cannulation site bleeding, right", StringComparison.Ordinal));
        Assert.Equal(10, drawn + int.Parse(counted.Value, System.Globalization.CultureInfo.InvariantCulture));
    }

    [Theory]
    [MemberData(nameof(Courses))]
    public void The_screen_shows_the_sections_and_paper_the_one_page(string name)
    {
        string html = HtmlWriter.Write(Sheet(name));
        Assert.Contains("@page { size: A4; margin: 0; }", html, StringComparison.Ordinal);
        Assert.Single(Paper().Matches(html));
        Assert.Contains("<h2>Not known</h2>", html, StringComparison.Ordinal);
        Assert.Contains("No certified medical device", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void The_same_course_at_the_same_moment_gives_the_same_bytes()
    {
        DateTimeOffset stamp = SampleCourses.Now;
        Assert.Equal(PdfWriter.Write(Sheet("typical"), stamp), PdfWriter.Write(Sheet("typical"), stamp));
    }

    [Fact]
    public void Hostile_words_neither_break_the_page_nor_run()
    {
        CourseReading hostile = SampleCourses.Read(
        [
            (SampleCourses.Start, new ComplicationSeen { Complication = ComplicationKind.Other, Gravity = ComplicationGravity.Watched, Description = "</svg><script>x</script>\u202Egnp.\n" + new string('W', 1500) }),
            (SampleCourses.Start, new ImagingDone { Modality = ImagingModality.Other, Finding = string.Concat(Enumerable.Repeat("\U0001F600漢字", 300)) }),
        ]);
        ReportDocument sheet = HandoverSheet.Of(hostile, SampleCourses.Now);
        using PdfDocument pdf = PdfDocument.Open(PdfWriter.Write(sheet, SampleCourses.Now));
        Assert.Equal(1, pdf.NumberOfPages);
        string html = HtmlWriter.Write(sheet);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain('\u202E', html);
    }

    [Fact]
    public void A_reading_later_than_the_moment_of_the_sheet_is_not_on_it()
    {
        ReportDocument early = HandoverSheet.Of(SampleCourses.Typical, SampleCourses.Start.AddHours(3));
        string words = string.Concat(early.OnePage!.Items.OfType<Text>().Select(static t => t.Content));
        Assert.Contains("4.2 ± 0.1 L/min", words, StringComparison.Ordinal);
        Assert.DoesNotContain("3.24 ± 0.1 L/min", words, StringComparison.Ordinal);
    }

    private static CourseReading Reading(string name) => name switch
    {
        "empty" => SampleCourses.Empty,
        "typical" => SampleCourses.Typical,
        _ => SampleCourses.Overfull,
    };

    private static ReportDocument Sheet(string name) => HandoverSheet.Of(Reading(name), SampleCourses.Now);

    private static PdfDocument Opened(string name)
    {
        byte[] bytes = PdfWriter.Write(Sheet(name), SampleCourses.Now);
        if (Environment.GetEnvironmentVariable("CAVAXIS_KEEP_SHEETS") is string folder)
        {
            File.WriteAllBytes(Path.Combine(folder, $"handover-{name}.pdf"), bytes);
        }

        return PdfDocument.Open(bytes);
    }

    private static string Bare(string words) => string.Concat(words.Where(static c => !char.IsWhiteSpace(c)))
        .Replace("\uFB03", "ffi", StringComparison.Ordinal).Replace("\uFB00", "ff", StringComparison.Ordinal)
        .Replace("\uFB01", "fi", StringComparison.Ordinal).Replace("\uFB02", "fl", StringComparison.Ordinal);

    [GeneratedRegex(@"\d+")]
    private static partial Regex Count();

    [GeneratedRegex("""<div class="paper" aria-hidden="true">\s*<svg [^>]*width="210mm" height="297mm" """)]
    private static partial Regex Paper();
}
