using System.Collections.Immutable;
using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Explanations.Reasoning;
using Cavaxis.Course.Explanations.Trends;
using Cavaxis.Course.Observations;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Tests.Explanations;

public class ExplainerTests
{
    private static readonly ExplanationKnowledge Known = ExplanationKnowledge.BuiltIn;

    [Theory]
    [InlineData(SupportKind.VenoVenous)]
    [InlineData(SupportKind.VenoArterial)]
    [InlineData(SupportKind.VenoArterialVenous)]
    public void Without_any_sign_the_odds_are_those_before_and_every_sign_is_listed_as_missing(SupportKind support)
    {
        ExplanationReport report = Explainer.Explain(new TrendWindow(support, [], []));
        double all = Known.Causes.Sum(c => c.PriorOdds.GetValueOrDefault(support));
        Assert.All(report.Explanations, e => Assert.Equal(Known.Causes[(int)e.Cause].PriorOdds[support] / all, e.Probability, 9));
        Assert.Equal(Known.Signs.Count(s => s.Serves(support)), report.Missing.Length);
        Assert.Empty(report.Used);
        Assert.NotNull(report.Next);
    }

    [Fact]
    public void A_patient_of_the_library_with_a_cause_at_full_size_is_recognised_and_the_reasons_carry_numbers()
    {
        ExplanationReport report = Explainer.Explain(Window("vv adult 3", CauseOfChange.DrainageObstruction));
        Assert.Equal(CauseOfChange.DrainageObstruction, report.Explanations[0].Cause);
        Assert.InRange(report.Explanations[0].Probability, 0.95, 1);
        Assert.Equal(1, report.Explanations.Sum(static e => e.Probability), 9);
        SignEvidence inlet = report.Explanations[0].For.Single(static e => e.Quantity == ObservedQuantity.InletPressureMmHg);
        Assert.True(inlet.Observed.Value < -50 && inlet.Expected.Value < -50 && inlet.Weight > 1);
        Assert.Contains("mmHg", inlet.Sentence, StringComparison.Ordinal);
        Assert.NotEmpty(report.Explanations.Single(static e => e.Cause == CauseOfChange.WorseLungs).Against);
        Assert.Empty(report.Unexplained);
    }

    [Fact]
    public void One_wrong_reading_decides_nothing_and_is_pointed_at()
    {
        TrendWindow right = Window("vv adult 3", CauseOfChange.DrainageObstruction);
        TrendWindow wrong = right with
        {
            Signs = [.. right.Signs.Select(static s => s.Quantity == ObservedQuantity.PostMembranePo2MmHg ? s with { Now = Estimate.Normal(60, 15, Origin.Measured) } : s)],
        };
        ExplanationReport report = Explainer.Explain(wrong);
        Assert.Equal(CauseOfChange.DrainageObstruction, report.Explanations[0].Cause);
        Assert.Contains(report.Unexplained, static s => s.Contains("oxygen tension after the membrane lung", StringComparison.Ordinal));
    }

    [Fact]
    public void What_a_setting_does_is_no_sign()
    {
        PatternPatient patient = Known.Patients.Single(static p => p.Name == "va adult 2");
        ImmutableArray<double> response = patient.Responses.Single(static r => r.Setting == SettingKind.PumpSpeed).PerUnit;
        SettingChange faster = new(SettingKind.PumpSpeed, 3000, 3300);
        TrendWindow told = new(SupportKind.VenoArterial, Signs(patient, i => response[i] * faster.Step), [faster]);
        ExplanationReport report = Explainer.Explain(told);
        Assert.Equal(CauseOfChange.NothingChanged, report.Explanations[0].Cause);
        Assert.Empty(report.Unexplained);
        Assert.Contains(report.Notes, static n => n.Contains("settings", StringComparison.Ordinal));

        // The same readings without the setting: no cause lets more flow expect.
        Assert.Contains(Explainer.Explain(told with { Settings = [] }).Unexplained, static s => s.Contains("pump flow", StringComparison.Ordinal));
    }

    [Fact]
    public void The_order_of_the_signs_does_not_matter()
    {
        TrendWindow window = Window("va child", CauseOfChange.Hypovolaemia);
        ObservedSign[] turned = [.. window.Signs];
        Array.Reverse(turned);
        ImmutableArray<CauseOdds> one = Explainer.Odds(Known, window);
        ImmutableArray<CauseOdds> other = Explainer.Odds(Known, window with { Signs = [.. turned] });
        Assert.All(one.Zip(other), static x => Assert.Equal(x.First.Probability, x.Second.Probability, 9));
    }

    // The odds now are the mean of the odds after, weighed by how likely each answer is. The grid drops what lies beyond five spreads: under 2 % of a Student tail of four degrees.
    [Fact]
    public void The_answers_of_the_next_observation_together_give_the_odds_of_now()
    {
        TrendWindow window = Few("vv adult 1", CauseOfChange.Recirculation, ObservedQuantity.RightArmSaturationPercent, ObservedQuantity.PumpFlowLPerMin, ObservedQuantity.PreMembraneSaturationPercent);
        ExplanationReport report = Explainer.Explain(window);
        Explanation first = report.Explanations[0];
        double together = report.Next!.Answers.Sum(a => a.Probability * (a.Odds.FirstOrDefault(o => o.Cause == first.Cause)?.Probability ?? 0));
        Assert.InRange(together, first.Probability - 0.02, first.Probability + 0.02);
        Assert.True(report.Next.GainBits >= report.Others[0].GainBits && report.Others[0].GainBits >= report.Others[1].GainBits);
        Assert.InRange(report.Next.GainBits, 0, report.EntropyBits);
    }

    [Fact]
    public void A_fall_of_the_saturations_at_a_steady_flow_asks_for_what_tells_the_causes_apart()
    {
        ExplanationReport report = Explainer.Explain(Few("vv adult 1", CauseOfChange.WorseLungs, ObservedQuantity.RightArmSaturationPercent, ObservedQuantity.PumpFlowLPerMin, ObservedQuantity.InletPressureMmHg));
        Assert.Contains(report.Next!.Quantity, (ObservedQuantity[])[
            ObservedQuantity.PostMembranePo2MmHg, ObservedQuantity.PreMembraneSaturationPercent, ObservedQuantity.RecirculationPercent, ObservedQuantity.RightArmPco2MmHg,
            ObservedQuantity.PlateauPressureCmH2O, ObservedQuantity.PreMembranePo2MmHg, ObservedQuantity.RightArmPo2MmHg, ObservedQuantity.RightArmPh]);
    }

    [Fact]
    public void A_stale_value_counts_as_missing_with_its_age_and_its_value_before_is_told()
    {
        TrendWindow window = Window("vv adult 1", CauseOfChange.FailingMembrane);
        TrendWindow stale = window with
        {
            Signs = [.. window.Signs.Select(static s => s.Quantity == ObservedQuantity.PostMembranePo2MmHg ? s with { Now = null, LastReadHoursAgo = 9 } : s)],
        };
        ExplanationReport report = Explainer.Explain(stale);
        Assert.Equal(9, report.Missing.Single(static m => m.Quantity == ObservedQuantity.PostMembranePo2MmHg).LastReadHoursAgo);
        Assert.DoesNotContain(ObservedQuantity.PostMembranePo2MmHg, report.Used);
    }

    [Fact]
    public void Impossible_values_doubled_signs_and_readings_without_spread_are_refused_by_name()
    {
        static ObservedSign Sign(double now, double sd) => new(ObservedQuantity.PumpFlowLPerMin, null, Estimate.Normal(now, sd, Origin.Measured));
        InputFaultException fault = Assert.Throws<InputFaultException>(static () => Explainer.Explain(new TrendWindow(
            SupportKind.VenoVenous, [Sign(99, 0.1), Sign(4, 0)], [new SettingChange(SettingKind.Sweep, -1, 4)])));
        Assert.Equal(["pumpFlowLPerMin.now", "pumpFlowLPerMin", "pumpFlowLPerMin.now.sd", "settings.Sweep"], fault.Faults.Select(static f => f.Field));
    }

    [Fact]
    public void No_text_orders_or_promises()
    {
        ExplanationReport report = Explainer.Explain(Window("vav adult 1", CauseOfChange.Hypovolaemia));
        string[] texts =
        [
            .. Known.Causes.Select(static c => c.Words + c.Meaning), .. report.Notes, .. report.Explanations.SelectMany(static e => e.For.Concat(e.Against).Select(static x => x.Sentence)),
            report.Next!.Why, .. report.Explanations.Select(static e => e.Sureness),
        ];
        Assert.All(texts, static t => Assert.DoesNotMatch(@"(?i)\b(safe|must|give|start|stop|order(?! nothing))\b", t));
    }

    private static TrendWindow Window(string name, CauseOfChange cause)
    {
        PatternPatient patient = Known.Patients.Single(p => p.Name == name);
        CausePattern pattern = patient.Patterns.Last(p => p.Cause == cause);
        return new TrendWindow(patient.Support, Signs(patient, i => pattern.Changes[i]), []);
    }

    private static TrendWindow Few(string name, CauseOfChange cause, params ObservedQuantity[] kept)
    {
        TrendWindow window = Window(name, cause);
        return window with { Signs = [.. window.Signs.Where(s => kept.Contains(s.Quantity))] };
    }

    private static ImmutableArray<ObservedSign> Signs(PatternPatient patient, Func<int, double> change) =>
    [
        .. Known.Signs.Select(static (s, i) => (Sign: s, Place: i)).Where(x => x.Sign.Serves(patient.Support) && double.IsFinite(patient.Levels[x.Place])).Select(x =>
        {
            QuantityDefinition q = QuantityTable.Of(x.Sign.Quantity);
            double before = patient.Levels[x.Place];
            double now = Math.Clamp(x.Sign.FromScale(x.Sign.ToScale(before) + change(x.Place)), q.Low, q.High);
            return new ObservedSign(q.Quantity, Estimate.Normal(Math.Clamp(before, q.Low, q.High), q.UsualSd, Origin.Measured), Estimate.Normal(now, q.UsualSd, Origin.Measured));
        }),
    ];
}
