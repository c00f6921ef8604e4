using Cavaxis.Course.Outcomes;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Course.Tests.Outcomes;

public class ProgrammeReviewTests
{
    [Fact]
    public void Every_outcome_is_counted_of_those_of_whom_it_is_known() => Cases.Sample(static cases =>
    {
        ProgrammeOutcomes outcomes = ProgrammeReview.Of(cases);
        Assert.Equal(Enum.GetValues<CountedOutcome>(), outcomes.Shares.Select(static s => s.Definition.Kind));
        Assert.All(outcomes.Shares, share =>
        {
            ProgrammeCase[] can = [.. cases.Where(c => share.Definition.AppliesTo.Contains(c.Support))];
            Assert.Equal(can.Length, share.Known + share.Unknown);
            Assert.Equal(can.Count(c => c.Of(share.Definition.Kind) == true), share.Events);
            Assert.Equal(share.Known == 0, share.Share is null);
        });
        Assert.Equal(cases.Length, outcomes.Mix.BySupport.Values.Sum());
        Assert.Equal(outcomes.Shares.Select(static s => s.Events), Enumerable.Range(0, outcomes.Shares.Count).Select(i => outcomes.BySupport.Values.Sum(s => s[i].Events)));
    });

    [Theory]
    [InlineData(19, 9, true)]
    [InlineData(20, 9, false)]
    [InlineData(40, 4, true)]
    [InlineData(40, 5, false)]
    [InlineData(40, 36, true)]
    [InlineData(40, 35, false)]
    public void Small_numbers_are_called_small(int of, int died, bool small)
    {
        OutcomeShare share = ProgrammeReview.Of(Deaths(of, died)).Shares[(int)CountedOutcome.SurvivedToDischarge];
        Assert.Equal(small, share.IsSmall);
        Assert.Equal(small, share.Words.Contains("small numbers", StringComparison.Ordinal));
        (double low, double high) = WilsonShare.Limits(of - died, of, WilsonShare.NormalQuantile975);
        Assert.Equal((low, high), (share.Low95!.Value, share.High95!.Value));
    }

    [Fact]
    public void A_leg_without_a_cannula_in_its_artery_is_not_counted_for_ischaemia()
    {
        ProgrammeOutcomes outcomes = ProgrammeReview.Of([Case("a", SupportKind.VenoVenous, (CountedOutcome.LimbIschaemia, false)), Case("b", SupportKind.VenoArterial, (CountedOutcome.LimbIschaemia, true))]);
        OutcomeShare share = outcomes.Shares[(int)CountedOutcome.LimbIschaemia];
        Assert.Equal((1, 1, 0), (share.Events, share.Known, share.Unknown));
    }

    [Fact]
    public void What_was_not_recorded_is_told_and_not_taken_for_well()
    {
        OutcomeShare share = ProgrammeReview.Of([Case("a", SupportKind.VenoVenous), Case("b", SupportKind.VenoVenous, (CountedOutcome.VenousThrombosis, true))]).Shares[(int)CountedOutcome.VenousThrombosis];
        Assert.Equal((1, 1, 1), (share.Events, share.Known, share.Unknown));
        Assert.Contains("Not recorded of 1", share.Words, StringComparison.Ordinal);
        Assert.Contains("known of nobody", ProgrammeReview.Of([]).Shares[0].Words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_mix_of_cases_is_stated()
    {
        CaseMix mix = ProgrammeReview.Of(
        [
            new("a", new DateOnly(2026, 1, 1), SupportKind.VenoVenous, 30, None) { ExpectedDeath = 0.4 }, new("b", new DateOnly(2026, 1, 2), SupportKind.Resuscitation, 60, None),
            new("c", new DateOnly(2026, 1, 3), SupportKind.VenoVenous, 50, None) { ExpectedDeath = 0.2 },
        ]).Mix;
        Assert.Equal((3, 30.0, 50.0, 60.0, 2), (mix.Cases, mix.YoungestYears, mix.MedianAgeYears, mix.OldestYears, mix.WithExpectedDeath));
        Assert.Equal(0.3, mix.MeanExpectedDeath!.Value, 12);
        Assert.Equal("3 cases: 2 veno-venous, 1 veno-arterial during resuscitation; age 30 to 60, median 50 years; a risk before support is known of 2, mean 30 %.", mix.Words);
    }

    [Fact]
    public void Wilson_intervals_of_a_programme_cover_its_true_share()
    {
        // Mean coverage of the 90 % interval over shares from 10 to 90 % with 25 cases each; Wilson's lies within 2 points of nominal on average.
        Random random = new(12);
        const int Repeats = 6000;
        int covered = 0;
        for (int i = 0; i < Repeats; i++)
        {
            double truth = 0.1 + (0.8 * random.NextDouble());
            int died = Enumerable.Range(0, 25).Count(_ => random.NextDouble() < truth);
            Estimate share = WilsonShare.Of(died, 25);
            covered += share.Low <= truth && truth <= share.High ? 1 : 0;
        }

        Assert.Equal(0.9, covered / (double)Repeats, (3 * Math.Sqrt(0.09 / Repeats)) + 0.01);
    }

    [Fact]
    public void Deaths_are_charted_in_the_order_of_time_and_what_is_left_out_is_told()
    {
        ProgrammeCase[] cases =
        [
            Risk("late", 9, 0.3, survived: false), Risk("early", 1, 0.6, survived: true), Risk("unknown", 2, 0.5, survived: null), Risk("no score", 3, null, survived: true),
        ];
        CusumChart chart = ProgrammeCusum.Deaths(cases, CusumSetting.Worse);
        Assert.Equal([new CusumCase(0.6, false), new CusumCase(0.3, true)], chart.Points.Select(static p => p.Case));
        Assert.Contains("2 of 4 cases are left out", chart.Words, StringComparison.Ordinal);
        Assert.Equal(3, ProgrammeCusum.Deaths(cases, CusumSetting.Worse, 0.45).Points.Count);
    }

    [Fact]
    public void Cases_that_cannot_be_are_refused()
    {
        Assert.Throws<InputFaultException>(static () => Case(" ", SupportKind.VenoVenous));
        Assert.Throws<InputFaultException>(static () => new ProgrammeCase("a", default, SupportKind.VenoVenous, 130, None));
        Assert.Throws<InputFaultException>(static () => new ProgrammeCase("a", default, SupportKind.VenoVenous, 30, None) { ExpectedDeath = 40 });
        Assert.Throws<InputFaultException>(static () => ProgrammeReview.Of([Case("a", SupportKind.VenoVenous), Case("a", SupportKind.VenoVenous)]));
        Assert.Throws<InputFaultException>(static () => ProgrammeCusum.Deaths([], CusumSetting.Worse, 40));
    }

    private static readonly Dictionary<CountedOutcome, bool> None = [];

    private static readonly Gen<ProgrammeCase[]> Cases = Gen.Select(Gen.Enum<SupportKind>(), Gen.Double[0, 90], Gen.Dictionary(Gen.Enum<CountedOutcome>(), Gen.Bool)[0, 8])
        .Array[0, 40].Select(static drawn => drawn.Select(static (c, i) => new ProgrammeCase($"case {i}", new DateOnly(2026, 1, 1).AddDays(i), c.Item1, c.Item2, c.Item3)).ToArray());

    private static ProgrammeCase[] Deaths(int of, int died) =>
        [.. Enumerable.Range(0, of).Select(i => Case($"case {i}", SupportKind.VenoArterial, (CountedOutcome.SurvivedToDischarge, i >= died)))];

    private static ProgrammeCase Case(string key, SupportKind support, params (CountedOutcome Kind, bool Happened)[] outcomes) =>
        new(key, new DateOnly(2026, 1, 1), support, 40, outcomes.ToDictionary(static o => o.Kind, static o => o.Happened));

    private static ProgrammeCase Risk(string key, int day, double? risk, bool? survived) => new(
        key, new DateOnly(2026, 1, day), SupportKind.VenoVenous, 40,
        survived is bool known ? new Dictionary<CountedOutcome, bool> { [CountedOutcome.SurvivedToDischarge] = known } : None)
    { ExpectedDeath = risk };
}
