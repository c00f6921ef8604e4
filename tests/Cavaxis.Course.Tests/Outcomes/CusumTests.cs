using Cavaxis.Course.Outcomes;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Course.Tests.Outcomes;

public class CusumTests
{
    private static readonly Source Here = new("of this test", Certainty.Assumption);

    private static readonly Gen<CusumCase[]> Courses = Gen.Select(Gen.Double[0.05, 0.9], Gen.Bool).Select(static (risk, died) => new CusumCase(risk, died)).Array[0, 120];

    [Fact]
    public void The_sum_never_falls_below_nought_and_starts_again_after_a_signal() => Gen.Select(Courses, Gen.Double[0.5, 5], Gen.Bool).Sample(static (cases, limit, worse) =>
    {
        CusumChart chart = CusumChart.Of(cases, new(worse ? 2 : 0.5, limit, Here));
        double before = 0;
        foreach (CusumPoint point in chart.Points)
        {
            Assert.Equal(Math.Max(0, before + point.Weight), point.Score, 12);
            Assert.Equal(point.Score >= limit, point.Signalled);
            before = point.Signalled ? 0 : point.Score;
        }

        Assert.Equal(cases.Length, chart.Points.Count);
    });

    [Fact]
    public void Observed_minus_expected_is_what_it_is_called() => Courses.Where(static c => c.Length > 0).Sample(static cases =>
        Assert.Equal(cases.Sum(static c => (c.Happened ? 1 : 0) - c.Risk), CusumChart.Of(cases, CusumSetting.Worse).Points[^1].ObservedMinusExpected, 9));

    [Fact]
    public void A_weight_is_fair_the_likelihood_ratio_is_one_on_average() => Gen.Select(Gen.Double[0.01, 0.99], Gen.Double[0.2, 5].Where(static r => Math.Abs(r - 1) > 0.05)).Sample(static (risk, ratio) =>
    {
        CusumSetting setting = new(ratio, 4, Here);
        Assert.Equal(1, (risk * Math.Exp(setting.Weight(risk, true))) + ((1 - risk) * Math.Exp(setting.Weight(risk, false))), 12);
        Assert.Equal(Math.Log(ratio), setting.Weight(risk, true) - setting.Weight(risk, false), 12);
    });

    [Theory]
    [InlineData(0.3, 2.0, 2.5, 1.0)]
    [InlineData(0.3, 2.0, 2.5, 2.0)]
    [InlineData(0.5, 0.5, 2.0, 1.0)]
    public void Mean_run_length_is_that_of_simulated_charts(double risk, double ratio, double limit, double truth)
    {
        CusumSetting setting = new(ratio, limit, Here);
        double computed = CusumRunLength.Mean([risk], setting, truth);
        double odds = truth * risk / (1 - risk);
        double happens = odds / (1 + odds);
        Random random = new(4);
        const int Runs = 4000;
        double sum = 0;
        double squares = 0;
        for (int run = 0; run < Runs; run++)
        {
            int length = 0;
            for (double score = 0; score < limit; length++)
            {
                score = Math.Max(0, score + setting.Weight(risk, random.NextDouble() < happens));
            }

            sum += length;
            squares += (double)length * length;
        }

        // Three standard errors of the simulated mean, and one in a hundred for the grid.
        double mean = sum / Runs;
        double error = Math.Sqrt(((squares / Runs) - (mean * mean)) / Runs);
        Assert.Equal(mean, computed, (3 * error) + (0.01 * mean));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(10)]
    public void A_fair_walk_of_one_up_and_one_down_signals_after_n_times_n_plus_one_cases(int n) =>
        Assert.Equal(n * (n + 1), CusumRunLength.Solve([(1, 0.5), (-1, 0.5)], n), 1e-6 * n * n);

    [Fact]
    public void A_change_is_found_sooner_than_chance_signals() => Gen.Double[0.1, 0.8].Sample(static risk =>
        Assert.True(CusumRunLength.Mean([risk], CusumSetting.Worse, 2) < CusumRunLength.Mean([risk], CusumSetting.Worse, 1)), iter: 10);

    [Fact]
    public void A_signal_is_named_with_its_case_and_how_often_chance_gives_one()
    {
        CusumChart chart = CusumChart.Of([.. Enumerable.Repeat(new CusumCase(0.3, true), 30)], CusumSetting.Worse);
        Assert.Contains("a signal at case 11, 22", chart.Words, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"by chance comes after about {CusumRunLength.Mean([0.3], CusumSetting.Worse, 1):0} cases"), chart.Words, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"so changed one comes after about {CusumRunLength.Mean([0.3], CusumSetting.Worse, 2):0}."), chart.Words, StringComparison.Ordinal);
        Assert.Contains("no signal", CusumChart.Of([new(0.3, false)], CusumSetting.Worse).Words, StringComparison.Ordinal);
        Assert.Contains("Small numbers", CusumChart.Of([new(0.3, false)], CusumSetting.Worse).Words, StringComparison.Ordinal);
        Assert.Contains("no chart", CusumChart.Of([], CusumSetting.Worse).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Settings_that_look_for_nothing_are_refused()
    {
        Assert.Throws<InputFaultException>(static () => new CusumSetting(1, 4, Here));
        Assert.Throws<InputFaultException>(static () => new CusumSetting(2, 0, Here));
        Assert.Throws<InputFaultException>(static () => CusumSetting.Worse.Weight(0, true));
        Assert.Throws<InputFaultException>(static () => CusumRunLength.Mean([], CusumSetting.Worse, 1));
    }
}
