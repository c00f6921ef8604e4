using System.Xml.Linq;
using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Tree;
using Cavaxis.Planning.Arterial;
using Cavaxis.Reports.ArterialReports;
using Cavaxis.Reports.Drawings;
using CsCheck;

namespace Cavaxis.Reports.Tests.ArterialReports;

public class ArterialSheetTests
{
    private static readonly Gen<ArteriesAnswer> Answers =
        from place in Gen.Int[0, ArterialTable.BuiltIn.Segments.Length - 1]
        from met in Gen.Bool
        from entered in Gen.Int[-1, ArterialTable.BuiltIn.Segments.Length - 1]
        from turn in Gen.Double[0, 1]
        select MadeUpTree.Answer(
            "A case with a title of the length that people give",
            met ? ArterialTable.BuiltIn.Segments[place].Course[^1] : null,
            entered < 0 ? null : ArterialTable.BuiltIn.Segments[entered].Name,
            i => Share((turn + (0.013 * i)) % 1));

    [Fact]
    public void No_two_words_overlap_wherever_the_flows_meet_and_the_cannula_lies() => Answers.Sample(a => Samples.AssertNoTextOverlaps(ArterialSheet.Of(a)), iter: 200);

    [Fact]
    public void All_words_lie_on_the_paper() => Answers.Sample(
        a =>
        {
            Drawing drawing = ArterialSheet.Of(a);
            var paper = new Box(0, 0, drawing.WidthMm, drawing.HeightMm);
            Assert.All(drawing.Items.OfType<Text>(), t => Assert.True(paper.Holds(TextMetrics.BoundsOf(t), 0.3), t.Content));
        },
        iter: 100);

    [Fact]
    public void Every_artery_is_drawn_and_every_organ_has_its_numbers()
    {
        ArteriesAnswer answer = MadeUpTree.Answer("Case", new LayoutPoint(49, 43), "femoral_R_I", static _ => Share(0.5));
        Drawing drawing = ArterialSheet.Of(answer);
        int strokes = drawing.Items.OfType<Polyline>().Count(static p => p.Points.Count >= 2 && p.Style.StrokeWidthMm > 0.3);
        Assert.True(strokes >= 2 * answer.Result!.Arteries.Length, $"{strokes} strokes");
        string[] words = [.. drawing.Items.OfType<Text>().Select(static t => t.Content)];
        Assert.All(answer.Result.Organs, o => Assert.Contains(words, w => w.Equals(o.Title, StringComparison.OrdinalIgnoreCase)));
        Assert.Contains(words, static w => w.StartsWith("Pump returns here", StringComparison.Ordinal));
        Assert.Contains(words, static w => w.StartsWith("Half from each", StringComparison.Ordinal));
        Assert.Contains(words, static w => w.Contains("not a certified medical device", StringComparison.Ordinal));
        Assert.Contains(words, static w => w.Contains("[INVENTED CASE]", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_organ_has_an_artery_of_the_built_in_tree() => Assert.All(Enum.GetValues<ArterialOrgan>(), static organ =>
    {
        OrganAnchor anchor = Assert.Single(OrganAnchor.All, a => a.Organ == organ);
        ArterySegment segment = ArterialTable.BuiltIn.Segments[ArterialTable.BuiltIn.IndexOf(anchor.Segment)];
        Assert.Equal(anchor.OnLeft, segment.Course[^1].X < 50);
    });

    [Theory]
    [MemberData(nameof(Samples.HostileTexts), MemberType = typeof(Samples))]
    public void Hostile_titles_leave_the_drawing_well_formed(string title) => Assert.NotNull(
        XDocument.Parse(SvgWriter.Write(ArterialSheet.Of(MadeUpTree.Answer(title, null, null, static _ => Share(0))), "arteries")).Root);

    [Fact]
    public void An_answer_without_numbers_is_not_drawn() => Assert.Throws<ArgumentException>(static () => ArterialSheet.Of(
        MadeUpTree.Answer("Case", null, null, static _ => Share(0)) with { Result = null }));

    private static OverBeat Share(double mean) => new(Math.Max(0, mean - 0.1), mean, Math.Min(1, mean + 0.1));
}
