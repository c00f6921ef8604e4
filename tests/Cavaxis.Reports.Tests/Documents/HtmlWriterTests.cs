using System.Text.RegularExpressions;
using System.Xml.Linq;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Html;
using CsCheck;

namespace Cavaxis.Reports.Tests.Documents;

public partial class HtmlWriterTests
{
    [Fact]
    public void Headings_tables_and_figures_carry_their_meaning()
    {
        XElement page = Parsed(HtmlWriter.Write(Samples.Report()));
        Assert.Equal("en-GB", page.Attribute("lang")?.Value);
        Assert.Equal(["h1", "h2", "h3", "h2"], page.Descendants().Select(e => e.Name.LocalName).Where(n => HeadingName().IsMatch(n)));
        Assert.All(page.Descendants("th"), th => Assert.Contains(th.Attribute("scope")?.Value, new[] { "col", "row" }));
        Assert.All(page.Descendants("table"), t => Assert.Equal("caption", t.Elements().First().Name.LocalName));
        XElement[] figures = [.. page.Descendants("figure")];
        Assert.Equal(2, figures.Length);
        Assert.All(figures, f => Assert.NotEmpty(f.Descendants().Single(e => e.Name.LocalName == "desc").Value));
        Assert.Contains("crosses the limit", figures[0].Descendants().Single(e => e.Name.LocalName == "desc").Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Identifiers_are_unique_and_those_referred_to_exist()
    {
        XElement page = Parsed(HtmlWriter.Write(Samples.Report()));
        string[] ids = [.. page.Descendants().Attributes("id").Select(a => a.Value)];
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.All(page.Descendants().Attributes("aria-labelledby").SelectMany(a => a.Value.Split(' ')), id => Assert.Contains(id, ids));
    }

    [Fact]
    public void Nothing_is_fetched_and_nothing_runs()
    {
        string html = HtmlWriter.Write(Samples.Report());
        XElement page = Parsed(html);
        Assert.DoesNotContain(page.DescendantsAndSelf(), e => e.Name.LocalName is "script" or "link" or "img" or "iframe" or "object" or "a" or "base");
        Assert.DoesNotContain(page.Descendants().Attributes(), a => a.Name.LocalName is "src" or "href" || a.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.DoesNotContain("url(", html, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", html, StringComparison.Ordinal);
    }

    [Fact]
    public void The_caution_stands_at_the_top_and_at_the_foot_of_every_printed_page()
    {
        string html = HtmlWriter.Write(Samples.Report());
        XElement page = Parsed(html);
        Assert.Contains(Samples.Caution, page.Element("body")!.Elements().First().Value, StringComparison.Ordinal);
        Assert.Matches(@"@page \{ size: A4;[^}]*@bottom-left \{ content: ""For trained clinicians", html);
        Assert.Contains("counter(page)", html, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Samples.HostileTexts), MemberType = typeof(Samples))]
    public void Hostile_text_stays_text(string hostile)
    {
        static string[] Shape(XElement page) => [.. page.DescendantsAndSelf().Select(e => e.Name.LocalName).Where(n => n != "br")];
        XElement page = Parsed(HtmlWriter.Write(Samples.HostileReport(hostile)));
        Assert.Equal(Shape(Parsed(HtmlWriter.Write(Samples.HostileReport("harmless")))), Shape(page));
        Assert.DoesNotContain('<', page.Descendants("style").Single().Value);
    }

    [Fact]
    public void Any_text_gives_a_page_of_the_same_shape() => Gen.String.Sample(s =>
    {
        if (!string.IsNullOrWhiteSpace(s))
        {
            XElement page = Parsed(HtmlWriter.Write(Samples.HostileReport(s)));
            Assert.Single(page.Descendants("table"));
        }
    });

    [Fact]
    public void The_same_report_gives_the_same_page() =>
        Assert.Equal(HtmlWriter.Write(Samples.Report()), HtmlWriter.Write(Samples.Report()));

    [Fact]
    public void Callouts_say_their_kind_in_words()
    {
        string html = HtmlWriter.Write(Samples.Report());
        Assert.Contains("STOP", html, StringComparison.Ordinal);
        Assert.Contains("NOTE", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_with_a_row_of_another_length_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new Table("t", [new("a"), new("b")], [["1"]]));
        Assert.Throws<ArgumentException>(() => new Table("t", [], []));
    }

    [Fact]
    public void A_figure_without_alternative_text_is_refused() =>
        Assert.Throws<ArgumentException>(() => new Figure(Samples.EveryItem(), "caption", " "));

    /// <summary>The page read as XML: only the few elements that HTML leaves open are closed first.</summary>
    private static XElement Parsed(string html)
    {
        string body = html[(html.IndexOf('\n', StringComparison.Ordinal) + 1)..];
        body = MetaTag().Replace(body, "<meta$1/>").Replace("<br>", "<br/>", StringComparison.Ordinal);
        return XElement.Parse(body);
    }

    [GeneratedRegex("<meta([^>]*)>")]
    private static partial Regex MetaTag();

    [GeneratedRegex("^h[1-6]$")]
    private static partial Regex HeadingName();
}
