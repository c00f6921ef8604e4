using Cavaxis.Reports.Charts;
using Cavaxis.Reports.Drawings;
using CsCheck;

namespace Cavaxis.Reports.Tests.Charts;

public class LineChartTests
{
    [Fact]
    public void Words_of_everything_stand_in_the_chart_with_units()
    {
        string words = string.Join(' ', Samples.Chart().Build().Items.OfType<Text>().Select(t => t.Content));
        foreach (string part in new[] { "Flow (L/min)", "Pressure drop (mmHg)", "Drainage 23 Fr", "9 of 10", "Suction limit", "Flow needed", "Planned point" })
        {
            Assert.Contains(part, words, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Values_lie_between_the_ticks_beside_them()
    {
        // Independent of the painter's own mapping: the marker of (2, 40) must lie on the crossing of the grid lines 2 and 40.
        Drawing chart = new LineChart("t", "d", new ChartAxis("x", "mm"), new ChartAxis("y", "mm"))
            .With(new ChartSeries("s", [new(0, 0), new(2, 40), new(4, 80)], Markers: true)).Build();
        Circle middle = chart.Items.OfType<Circle>().ElementAt(1);
        Text x = chart.Items.OfType<Text>().Single(t => t.Content == "2" || t.Content == "2.0");
        Text y = chart.Items.OfType<Text>().Single(t => t.Content == "40");
        Assert.Equal(x.At.X, middle.Centre.X, 6);
        Assert.Equal(y.At.Y - 0.95, middle.Centre.Y, 6);
    }

    [Fact]
    public void No_two_words_overlap_however_close_the_lines_end() =>
        Gen.Select(Gen.Double[0, 100].Array[1, 8], Gen.Double[0, 100].Array[0, 4], Gen.Double[0, 10].Array[0, 3]).Sample(t =>
        {
            LineChart chart = new("Title", "d", new ChartAxis("Time", "h"), new ChartAxis("Value", "mmHg"));
            chart = t.Item1.Select((y, i) => new ChartSeries($"series {i} with a long name that wraps", [new(0, 0), new(10, y)]))
                .Aggregate(chart, (c, s) => c.With(s));
            chart = t.Item2.Aggregate(chart, (c, v) => c.With(new Threshold("limit of the programme", v, ThresholdKind.Limit)));
            chart = t.Item3.Aggregate(chart, (c, v) => c.With(new Threshold("start of something", v, ThresholdKind.Target, OnX: true)));
            Samples.AssertNoTextOverlaps(chart.Build());
        });

    [Fact]
    public void Series_differ_without_colour()
    {
        LineChart chart = new("t", "d", new ChartAxis("x", ""), new ChartAxis("y", ""));
        for (int i = 0; i < 4; i++)
        {
            chart = chart.With(new ChartSeries($"s{i}", [new(0, 0), new(1, i)]));
        }

        IEnumerable<Dash> dashes = chart.Build().Items.OfType<Polyline>().Where(p => p.Style.StrokeWidthMm == 0.5).Select(p => p.Style.Dash);
        Assert.Equal(4, dashes.Distinct().Count());
    }

    [Fact]
    public void A_chart_that_cannot_be_drawn_is_refused()
    {
        LineChart empty = new("t", "d", new ChartAxis("x", ""), new ChartAxis("y", "", ChartScale.Logarithmic));
        Assert.Throws<ArgumentException>(empty.Build);
        Assert.Throws<ArgumentException>(empty.With(new ChartSeries("s", [])).Build);
        Assert.Throws<ArgumentException>(empty.With(new ChartSeries("s", [new(0, double.NaN)])).Build);
        Assert.Throws<ArgumentException>(empty.With(new ChartSeries("s", [new(0, 0)])).Build);
        Assert.Throws<ArgumentException>(empty.With(new ChartBand("b", [new(0, 2, 1), new(1, 1, 2)])).Build);
    }
}
