using Cavaxis.Quantities.Faults;
using Cavaxis.Reports.AxisDrawings;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Drawings;
using Cavaxis.Reports.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Cavaxis.Reports.Tests.Documents;

public class PdfWriterTests
{
    private static readonly DateTimeOffset Stamp = new(2024, 5, 6, 7, 8, 9, TimeSpan.FromHours(2));

    [Fact]
    public void The_caution_and_the_page_number_stand_on_every_page()
    {
        using PdfDocument pdf = Opened(Samples.Report(rows: 120));
        Assert.True(pdf.NumberOfPages >= 4);
        Assert.All(pdf.GetPages(), p =>
        {
            Assert.Contains(Squeezed(Samples.Caution), Squeezed(p.Text), StringComparison.Ordinal);
            Assert.Contains(Squeezed($"page {p.Number} of {pdf.NumberOfPages}"), Squeezed(p.Text), StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Every_block_is_there_in_order()
    {
        using PdfDocument pdf = Opened(Samples.Report());
        string text = Squeezed(string.Concat(pdf.GetPages().Select(p => p.Text)));
        int at = 0;
        foreach (string part in new[] { "Cannulation plan", "Summary", "The plan drains", "STOP", "Choose another site", "second step", "Pressure drop (mmHg)", "Figure 1. Pressure drop.", "Every row", "Row 3", "Axis", "Right atrium", "Figure 2." })
        {
            int next = text.IndexOf(Squeezed(part), at, StringComparison.Ordinal);
            Assert.True(next >= 0, part);
            at = next;
        }
    }

    [Fact]
    public void A_long_table_repeats_its_header_and_loses_no_row()
    {
        using PdfDocument pdf = Opened(Samples.Report(rows: 150));
        string all = Squeezed(string.Concat(pdf.GetPages().Select(p => p.Text)));
        Assert.All(Enumerable.Range(1, 150), i => Assert.Contains($"Row{i}{i * 3}because", all, StringComparison.Ordinal));
        Assert.All(
            pdf.GetPages().Where(p => Squeezed(p.Text).Contains("becauseitisso", StringComparison.Ordinal)),
            p => Assert.Contains("NameValue(mmHg)Why", Squeezed(p.Text), StringComparison.Ordinal));
        Assert.Contains("Everyrow(continued)", all, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_taller_than_a_page_goes_on_over_the_next()
    {
        string words = string.Join(' ', Enumerable.Range(0, 3000).Select(i => $"w{i}"));
        using PdfDocument pdf = Opened(new ReportDocument("t", "", Samples.Caution, [new Table("c", [new("a"), new("b")], [["x", words], ["last", "row"]])]));
        string all = Squeezed(string.Concat(pdf.GetPages().Select(p => p.Text)));
        Assert.All([0, 1499, 2999], i => Assert.Contains($"w{i}", all, StringComparison.Ordinal));
        Assert.Contains("lastrow", all, StringComparison.Ordinal);
        Assert.InRange(pdf.NumberOfPages, 2, 20);
    }

    [Fact]
    public void No_letter_lies_outside_the_margins()
    {
        using PdfDocument pdf = Opened(Samples.Report(rows: 60));
        Assert.All(pdf.GetPages().SelectMany(p => p.Letters), l =>
        {
            Assert.InRange(l.BoundingBox.Left, 40, 560);
            Assert.InRange(l.BoundingBox.Right, 40, 560);
            Assert.InRange(l.BoundingBox.Bottom, 15, 842 - 30);
        });
    }

    [Fact]
    public void The_same_report_gives_the_same_bytes_and_another_stamp_does_not()
    {
        byte[] first = PdfWriter.Write(Samples.Report(), Stamp);
        Assert.Equal(first, PdfWriter.Write(Samples.Report(), Stamp));
        Assert.NotEqual(first, PdfWriter.Write(Samples.Report(), Stamp.AddSeconds(1)));
    }

    [Fact]
    public void Title_stamp_and_language_are_in_the_document()
    {
        byte[] bytes = PdfWriter.Write(Samples.Report(), Stamp);
        using PdfDocument pdf = PdfDocument.Open(bytes);
        Assert.Equal("Cannulation plan", pdf.Information.Title);
        Assert.StartsWith("D:20240506050809", pdf.Information.CreationDate, StringComparison.Ordinal);
        Assert.Contains("en-GB", System.Text.Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
        Assert.True(pdf.TryGetBookmarks(out UglyToad.PdfPig.Outline.Bookmarks? marks));
        Assert.Equal(["Summary", "Pressure", "Axis"], marks!.GetNodes().Select(n => n.Title));
    }

    [Theory]
    [MemberData(nameof(Samples.HostileTexts), MemberType = typeof(Samples))]
    public void Hostile_text_gives_a_readable_document(string hostile)
    {
        using PdfDocument pdf = Opened(Samples.HostileReport(hostile));
        Assert.All(pdf.GetPages(), p => Assert.Contains("page", p.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void A_word_of_a_hundred_thousand_letters_is_broken()
    {
        using PdfDocument pdf = Opened(new ReportDocument("t", "", Samples.Caution, [new Paragraph(new string('W', 100_000))]));
        Assert.Equal(100_000, pdf.GetPages().Sum(p => p.Letters.Count(l => l.Value == "W")));
    }

    [Fact]
    public void The_axis_is_printed_at_true_size_under_its_heading()
    {
        // Labels "0" and "25" of the ruler lie 25 cm apart in the patient: 125 mm at 1 : 2, 125 / 25.4 * 72 points.
        using PdfDocument pdf = Opened(new ReportDocument("t", "", Samples.Caution, [new PageBreak(), new Heading(2, "Axis"), new Figure(
            AxisDrawing.Of(Samples.Scene(1, 1)), "caption", "alternative")]));
        Page page = pdf.GetPage(2);
        Assert.Contains("Scale1:2printed", Squeezed(page.Text), StringComparison.Ordinal);
        Assert.Contains("Figure1.caption", Squeezed(page.Text), StringComparison.Ordinal);
        Letter[] ruler = [.. page.Letters.Where(l => Math.Abs(l.PointSize - 6) < 0.01)];
        double zero = ruler.Single(l => l.Value == "0" && ruler.Count(k => Math.Abs(k.StartBaseLine.Y - l.StartBaseLine.Y) < 0.1) == 1).StartBaseLine.Y;
        double last = ruler.Min(l => l.StartBaseLine.Y);
        Assert.Equal(125 / 25.4 * 72, zero - last, tolerance: 0.02);
    }

    [Fact]
    public void A_drawing_shrunk_to_fit_says_so_and_one_at_true_size_does_not()
    {
        static string Printed(double heightMm)
        {
            using PdfDocument pdf = Opened(new ReportDocument("t", "", Samples.Caution, [new Figure(new Drawing(100, heightMm, "t", "d", []), "caption", "alt")]));
            return Squeezed(string.Concat(pdf.GetPages().Select(p => p.Text)));
        }

        Assert.Contains("Printedat", Printed(400), StringComparison.Ordinal);
        Assert.DoesNotContain("Printedat", Printed(240), StringComparison.Ordinal);
    }

    [Fact]
    public void Missing_fonts_are_a_typed_fault_that_names_the_package()
    {
        var fault = Assert.Throws<InputFaultException>(() => DejaVuFonts.In(["/nowhere"]));
        Assert.Equal(FaultCode.NotFound, fault.Faults.Single().Code);
        Assert.Contains("fonts-dejavu-core", fault.Faults.Single().Remedy, StringComparison.Ordinal);
    }

    private static PdfDocument Opened(ReportDocument report) => PdfDocument.Open(PdfWriter.Write(report, Stamp));

    private static string Squeezed(string text) => text.Replace(" ", string.Empty, StringComparison.Ordinal);
}
