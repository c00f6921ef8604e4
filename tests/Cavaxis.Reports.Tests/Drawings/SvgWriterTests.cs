using System.Globalization;
using System.Xml.Linq;
using Cavaxis.Reports.Drawings;
using CsCheck;

namespace Cavaxis.Reports.Tests.Drawings;

public class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void A_drawing_of_every_item_is_well_formed_and_named()
    {
        XElement svg = XElement.Parse(SvgWriter.Write(Samples.EveryItem(), "figure-3"));
        Assert.Equal("img", svg.Attribute("role")?.Value);
        Assert.Equal("figure-3-title figure-3-desc", svg.Attribute("aria-labelledby")?.Value);
        Assert.Equal("Every item", svg.Element(Svg + "title")?.Value);
        Assert.Equal("One of each kind.", svg.Element(Svg + "desc")?.Value);
        Assert.Equal("100mm", svg.Attribute("width")?.Value);
        Assert.Equal("rotate(-90 10 60)", svg.Elements(Svg + "text").Last().Attribute("transform")?.Value);
    }

    [Fact]
    public void Nothing_is_fetched_from_elsewhere()
    {
        XElement svg = XElement.Parse(SvgWriter.Write(Samples.EveryItem()));
        Assert.DoesNotContain(svg.DescendantsAndSelf(), e => e.Name.LocalName is "image" or "use" or "script" or "style" or "a" or "foreignObject");
        Assert.DoesNotContain(svg.DescendantsAndSelf().Attributes(), a => !a.IsNamespaceDeclaration && a.Value.Contains(':', StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Samples.HostileTexts), MemberType = typeof(Samples))]
    public void Hostile_text_stays_text(string hostile)
    {
        var drawing = new Drawing(10, 10, hostile, hostile, [new Text(new(1, 1), hostile, 8)]);
        XElement svg = XElement.Parse(SvgWriter.Write(drawing));
        Assert.Equal(4, svg.Elements().Count());
        Assert.Empty(svg.Elements(Svg + "text").Single().Elements());
    }

    [Fact]
    public void Any_text_gives_well_formed_xml() =>
        Gen.String.Sample(s => XElement.Parse(SvgWriter.Write(new Drawing(10, 10, s, s, [new Text(new(1, 1), s, 8)]))));

    [Fact]
    public void The_same_drawing_gives_the_same_text_in_any_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string first = SvgWriter.Write(Samples.EveryItem());
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(string.Empty) { NumberFormat = { NumberDecimalSeparator = ",", NegativeSign = "~" } };
            Assert.Equal(first, SvgWriter.Write(Samples.EveryItem()));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void An_identifier_with_other_characters_is_refused() =>
        Assert.Throws<ArgumentException>(() => SvgWriter.Write(Samples.EveryItem(), "a\" onload=\"x"));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.PositiveInfinity)]
    public void A_drawing_without_a_size_is_refused(double width) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Drawing(width, 10, "t", "d", []));
}
