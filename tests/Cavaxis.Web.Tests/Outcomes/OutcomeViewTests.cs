using System.Globalization;
using Cavaxis.Bedside.Programmes;
using Cavaxis.Course.Outcomes;
using Cavaxis.Quantities.Faults;
using Cavaxis.Web.Pages.Outcomes;

namespace Cavaxis.Web.Tests.Outcomes;

public class OutcomeViewTests
{
    [Fact]
    public void Shares_are_told_with_published_intervals()
    {
        // Newcombe 1998, Stat Med 17:857, table I, score method (from memory): 1 of 29 gives 0.0061 to 0.1718; 0 of 20 gives 0 to 0.1611.
        OutcomeShare one = Share(29, 1);
        Assert.Equal(("1 of 29", "3 %", "1 to 17 %"), (OutcomeWords.Count(one), OutcomeWords.Share(one), OutcomeWords.Interval(one)));
        Assert.Equal("0 to 16 %", OutcomeWords.Interval(Share(20, 0)));
    }

    [Fact]
    public void Few_cases_are_called_few_and_none_none()
    {
        Assert.Contains("Few cases", OutcomeWords.Few(Share(19, 9)), StringComparison.Ordinal);
        Assert.Contains("Few cases", OutcomeWords.Few(Share(40, 4)), StringComparison.Ordinal);
        Assert.Empty(OutcomeWords.Few(Share(20, 9)));
        OutcomeShare nobody = ProgrammeReview.Of([]).Shares[0];
        Assert.Equal(("not known", string.Empty, "▲ No case"), (OutcomeWords.Share(nobody), OutcomeWords.Interval(nobody), OutcomeWords.Few(nobody)));
    }

    [Fact]
    public void Every_kind_of_support_has_words() => Assert.All(Enum.GetValues<SupportKind>(), static k => Assert.NotEmpty(OutcomeWords.Of(k)));

    [Fact]
    public void A_chart_lies_within_its_frame_to_scale_and_says_its_signals()
    {
        CusumChart chart = CusumChart.Of([.. Enumerable.Repeat(new CusumCase(0.4, true), 14)], CusumSetting.Worse);
        CusumPlot plot = new(chart);
        Assert.All(chart.Points, p => Assert.InRange(plot.Y(p.Score), CusumPlot.PlotTop, CusumPlot.PlotBottom));
        Assert.Equal(CusumPlot.PlotRight, plot.X(14), 1e-9);
        Assert.Equal(plot.Y(0) - plot.Y(1), plot.Y(2) - plot.Y(3), 1e-9);
        Assert.Contains(chart.Points, static p => p.Signalled);
        Assert.Contains(chart.Points.First(static p => p.Signalled).Index.ToString(CultureInfo.InvariantCulture), CusumPlot.Signals(chart), StringComparison.Ordinal);
        Assert.Contains("control limit 4.5", plot.Words, StringComparison.Ordinal);
        Assert.Equal(1 + chart.Points.Count(static p => p.Signalled), plot.Line.Count(static c => c == 'M'));
        Assert.Equal("no signal", CusumPlot.Signals(CusumChart.Of([new CusumCase(0.4, false)], CusumSetting.Worse)));
    }

    [Fact]
    public void Without_an_expected_risk_there_is_no_chart_and_a_number_that_is_none_is_told()
    {
        ProgrammeCase[] cases = Cases(10, 4);
        Assert.Null(new CusumAsk().Of(cases));
        Assert.Equal(10, new CusumAsk { RiskPercent = "40" }.Of(cases)!.Points.Count);
        Assert.Equal(4.5, new CusumAsk { RiskPercent = "40,5 %" }.Of(cases)!.Setting.Limit);
        Assert.Equal((0.5, 3.0), (new CusumAsk { RiskPercent = "40", Worse = false, Limit = "3" }.Of(cases)!.Setting.OddsRatio, new CusumAsk { RiskPercent = "40", Limit = "3" }.Of(cases)!.Setting.Limit));
        foreach ((string risk, string limit) in new[] { ("0", ""), ("100", ""), ("much", ""), ("?", ""), ("40", "21"), ("40", "low") })
        {
            Assert.Throws<InputFaultException>(() => new CusumAsk { RiskPercent = risk, Limit = limit }.Of(cases));
        }
    }

    [Fact]
    public void Progress_is_quiet_at_first()
    {
        List<ProgrammeProgress> told = [];
        new Telling(told.Add, TimeSpan.FromHours(1)).Report(new ProgrammeProgress(1, 2));
        Assert.Empty(told);
        Telling at = new(told.Add, TimeSpan.Zero);
        at.Report(new ProgrammeProgress(1, 2));
        at.Report(new ProgrammeProgress(2, 2));
        Assert.Equal(new ProgrammeProgress(1, 2), told[0]);
    }

    private static OutcomeShare Share(int of, int events) => ProgrammeReview.Of(Cases(of, events)).Shares[0];

    private static ProgrammeCase[] Cases(int of, int survivors) =>
    [
        .. Enumerable.Range(0, of).Select(i => new ProgrammeCase(
            i.ToString(CultureInfo.InvariantCulture), new DateOnly(2031, 1, 1).AddDays(i), SupportKind.VenoVenous, 40,
            new Dictionary<CountedOutcome, bool> { [CountedOutcome.SurvivedToDischarge] = i < survivors })),
    ];
}
