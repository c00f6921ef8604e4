using Cavaxis.Arteries.Findings;
using Cavaxis.Reports.ArterialReports;
using Cavaxis.Reports.Drawings;
using CsCheck;

namespace Cavaxis.Reports.Tests.ArterialReports;

public class BloodPaintTests
{
    [Fact]
    public void More_oxygen_is_always_darker_so_that_the_order_shows_in_grey_print() => Gen.Select(Gen.Double[50, 99], Gen.Double[3, 40]).Sample((percent, more) =>
        Assert.True(Luminance(BloodPaint.Of(Math.Min(100, percent + more))) < Luminance(BloodPaint.Of(percent))));

    [Fact]
    public void Below_half_and_above_full_saturation_the_colour_stands_still()
    {
        Assert.Equal(BloodPaint.Of(50), BloodPaint.Of(12));
        Assert.Equal(BloodPaint.Of(100), BloodPaint.Of(104));
    }

    [Theory]
    [InlineData(0, 0, 0, BloodKind.Lungs)]
    [InlineData(0, 0.09, 0.4, BloodKind.Lungs)]
    [InlineData(0, 0.09, 0.8, BloodKind.Mixed)]
    [InlineData(0.4, 0.5, 0.6, BloodKind.Mixed)]
    [InlineData(0.2, 0.95, 1, BloodKind.Mixed)]
    [InlineData(0.7, 0.95, 1, BloodKind.Membrane)]
    [InlineData(1, 1, 1, BloodKind.Membrane)]
    public void Whose_blood_it_is_counts_by_nine_tenths_and_by_the_whole_beat(double lowest, double mean, double highest, BloodKind kind) =>
        Assert.Equal(kind, BloodPaint.KindOf(new OverBeat(lowest, mean, highest)));

    [Fact]
    public void The_three_kinds_differ_by_pattern_alone()
    {
        Point[] course = [new(0, 0), new(10, 0)];
        (int, Dash)[] patterns = [.. Enum.GetValues<BloodKind>().Select(k => BloodPaint.Strokes(course, 90, k, 2).OfType<Polyline>().ToArray()).Select(static s => (s.Length, s[^1].Style.Dash))];
        Assert.Equal(3, patterns.Distinct().Count());
    }

    // Relative luminance of sRGB (IEC 61966-2-1).
    private static double Luminance(Colour colour) => (0.2126 * Linear(colour.Red)) + (0.7152 * Linear(colour.Green)) + (0.0722 * Linear(colour.Blue));

    private static double Linear(byte part)
    {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
