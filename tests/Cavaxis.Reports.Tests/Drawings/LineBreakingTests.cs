using Cavaxis.Reports.Drawings;
using CsCheck;

namespace Cavaxis.Reports.Tests.Drawings;

public class LineBreakingTests
{
    [Fact]
    public void No_line_is_wider_than_the_room_and_no_letter_is_lost() =>
        Gen.Select(Gen.String[Gen.Char["ab WiÜ–"], 0, 200], Gen.Double[4, 60]).Sample(t =>
        {
            (string text, double width) = t;
            IReadOnlyList<string> lines = TextMetrics.Wrapped(text, width, 8);
            Assert.All(lines, l => Assert.True(TextMetrics.WidthMm(l, 8) <= width));
            static string Letters(string s) => s.Replace(" ", string.Empty, StringComparison.Ordinal);
            Assert.Equal(Letters(text), Letters(string.Concat(lines)));
        });

    [Fact]
    public void A_pair_of_surrogates_is_not_torn_apart() =>
        Assert.All(
            LineBreaking.Wrapped(string.Concat(Enumerable.Repeat("😀", 9)), l => l.Length <= 3),
            l => Assert.False(char.IsHighSurrogate(l[^1])));

    [Fact]
    public void Line_feeds_stay_breaks() => Assert.Equal(["a b", string.Empty, "c"], TextMetrics.Wrapped("a b\r\n\nc", 100, 8));

    [Fact]
    public void Widths_are_those_of_the_font()
    {
        // hmtx of DejaVu Sans 2.37: H 752, a 613 and m 974 thousandths; bold H 837.
        Assert.Equal((0.752 + 0.613 + 0.974) * 10 * 25.4 / 72, TextMetrics.WidthMm("Ham", 10), 9);
        Assert.Equal(0.837 * 10 * 25.4 / 72, TextMetrics.WidthMm("H", 10, bold: true), 9);
    }

    [Fact]
    public void A_turned_text_has_a_turned_box()
    {
        Box flat = TextMetrics.BoundsOf(new Text(new(0, 0), "Turned", 10));
        Box upright = TextMetrics.BoundsOf(new Text(new(0, 0), "Turned", 10, RotationDeg: 90));
        Assert.Equal(flat.Width, upright.Height, 9);
        Assert.Equal(flat.Height, upright.Width, 9);
    }
}
