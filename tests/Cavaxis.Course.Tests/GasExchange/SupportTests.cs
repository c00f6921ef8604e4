using Cavaxis.Blood.CarbonDioxide;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Course.Criteria;
using Cavaxis.Course.GasExchange;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.MembraneLungs;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Course.Tests.GasExchange;

public class SupportTests
{
    private static readonly BloodConstants K = BloodConstants.Default;

    [Fact]
    public void Errors_carried_by_sampling_are_those_of_the_first_order_where_that_is_exact() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[0.1, 2], Gen.Double[-5, 5], Gen.Double[0.1, 2]).Sample(static (a, sdA, b, sdB) =>
        {
            Estimate sum = Propagation.Through([Read(a, sdA), Read(b, sdB)], static x => (2 * x[0]) - x[1])!;
            double sd = Math.Sqrt((4 * sdA * sdA) + (sdB * sdB));
            Assert.Equal((2 * a) - b, sum.Value, 9);

            // 4000 draws: the sd errs by 1/√8000 of itself, an end of the interval by 0.033 sd; five times that.
            Assert.Equal(sd, sum.Sd, 5 * sd / Math.Sqrt(8000));
            Assert.Equal(sum.Value + (Estimate.NormalQuantile95 * sd), sum.High, 5 * 0.033 * sd);
        });

    [Fact]
    public void A_formula_without_an_answer_for_a_tenth_of_the_draws_has_none() =>
        Assert.Null(Propagation.Through([Read(1, 1)], static x => x[0] > 0 ? 1 / x[0] : double.NaN));

    [Fact]
    public void Effective_flow_is_what_does_not_recirculate()
    {
        RecirculationMeasurement quarter = DilutionRecirculation.Of([new(Read(4, 0), Read(1, 0)), new(Read(4, 0), Read(1.1, 0)), new(Read(4, 0), Read(0.9, 0))]);
        Estimate flow = EffectiveSupport.FlowLPerMin(Read(4, 0.1), quarter)!;
        Assert.Equal(3, flow.Value, 9);
        Assert.True(flow.Low < 3 && flow.High > 3 && flow.Sd > 0.07);
        Assert.Equal(0.5, EffectiveSupport.FlowOverOutput(flow, Read(6, 0))!.Value, 9);
        Assert.Null(EffectiveSupport.FlowLPerMin(Read(4, 0.1), quarter with { Percent = null }));
    }

    [Fact]
    public void The_saturation_to_expect_closes_the_oxygen_balance() =>
        Gen.Select(Gen.Double[1, 5], Gen.Double[5, 9], Gen.Double[8, 14], Gen.Double[0, 100]).Sample(static (effective, output, haemoglobin, native) =>
        {
            Estimate? expected = EffectiveSupport.ExpectedSaturationPercent(Exact(effective), Exact(output), Exact(haemoglobin), Exact(350), Exact(230), Exact(native));
            if (expected is null)
            {
                return;
            }

            // What both lungs take up is what the body consumes.
            double arterial = OxygenContent.FromPo2(haemoglobin, Po2(expected.Value, haemoglobin), BloodConditions.Standard, K);
            double venous = arterial - (230 / (10 * output));
            double post = OxygenContent.FromPo2(haemoglobin, 350, BloodConditions.Standard, K);
            Assert.Equal(230, (10 * effective * (post - venous)) + native, 0.5);
        });

    [Fact]
    public void Delivery_over_consumption_is_held_against_the_critical_ratio()
    {
        OxygenBudgetReadings readings = new(Exact(10), Exact(5), new(Exact(90), Exact(60)), Exact(200)) { NativeTransferMlPerMin = Exact(20) };
        OxygenBudget budget = OxygenBudgets.Of(readings)!;
        Assert.Equal(50 * ((1.34 * 10 * 0.9) + (0.0031 * 60)), budget.DeliveryMlPerMin.Value, 9);
        Assert.Equal(220, budget.ConsumptionMlPerMin.Value, 9);
        Assert.Equal(budget.DeliveryMlPerMin.Value / 220, budget.DeliveryOverConsumption!.Value, 9);
        Assert.Equal(100 / budget.DeliveryOverConsumption.Value, budget.ExtractionPercent!.Value, 9);
        Assert.Contains("above the ratio taken as critical, 2:1", budget.Words, StringComparison.Ordinal);
        OxygenBudget poor = OxygenBudgets.Of(new(Exact(7), Exact(4), new(Exact(80), Exact(45)), Exact(200)))!;
        Assert.False(poor.NativeLungKnown);
        Assert.Contains("below the ratio taken as critical", poor.Words, StringComparison.Ordinal);
        Assert.Contains("at least this", poor.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_lung_of_the_catalogue_does_what_is_expected_of_it()
    {
        MembraneLung lung = DeviceCatalogue.BuiltIn.MembraneLungs[0];
        OxygenTransfer expected = lung.Oxygen(4, 10, 0.65, 1);
        MembraneLungReadings now = Lung(4, 65, 100 * expected.OutletSaturation, 400) with { PrePressureMmHg = Exact(200), PostPressureMmHg = Exact(200 - (4 * (4 + (0.25 * 4)))) };
        MembraneLungPerformance does = MembraneLungAssessment.Of(now, now, lung);
        Assert.Equal(1, does.BoundOverExpected!.Value, 9);
        double dissolved = 40 * K.OxygenSolubilityMlPerDlPerMmHg * (400 - OxygenDissociation.Po2At(0.65, BloodConditions.Standard));
        Assert.Equal(expected.MlPerMin + dissolved, does.OxygenTransferMlPerMin!.Value, 6);
        Assert.Equal(5, does.DropPerFlow!.Value, 9);
        Assert.Equal(0, does.DropRisePercent!.Value, 9);
        Assert.DoesNotContain(does.FailureSigns, static s => s.Verdict == CriterionVerdict.Met);
    }

    [Fact]
    public void A_rise_of_the_drop_is_told_apart_from_more_flow()
    {
        MembraneLung lung = DeviceCatalogue.BuiltIn.MembraneLungs[0];
        MembraneLungReadings slow = Pressures(3, 3 * (4 + (0.25 * 3)));
        MembraneLungReadings fast = Pressures(5, 5 * (4 + (0.25 * 5)));
        Assert.Equal(0, MembraneLungAssessment.Of(fast, slow, lung).DropRisePercent!.Value, 9);
        Assert.Equal(100 * ((5.25 / 4.75) - 1), MembraneLungAssessment.Of(fast, slow).DropRisePercent!.Value, 9);
        Assert.Null(MembraneLungAssessment.Of(fast).DropRisePercent);
        MembraneLungPerformance clotted = MembraneLungAssessment.Of(Pressures(5, 5 * 1.4 * (4 + (0.25 * 5))), slow, lung);
        Assert.Equal(40, clotted.DropRisePercent!.Value, 9);
        Assert.Equal(CriterionVerdict.Met, clotted.FailureSigns.Single(static s => s.Criterion == MembraneFailureSigns.DropRise).Verdict);
    }

    [Fact]
    public void Blood_that_bypasses_the_gas_is_found_as_shunt() => Gen.Select(Gen.Double[0, 0.5], Gen.Double[0.5, 0.8]).Sample(static (shunt, inlet) =>
    {
        double pre = OxygenContent.FromPo2(10, OxygenDissociation.Po2At(inlet, BloodConditions.Standard), BloodConditions.Standard, K);
        double ideal = OxygenContent.FromPo2(10, MembraneLung.DryPressureMmHg - 35, BloodConditions.Standard, K);
        double po2 = OxygenContent.Po2At((shunt * pre) + ((1 - shunt) * ideal), 10, BloodConditions.Standard, K);
        MembraneLungReadings now = Lung(4, 100 * inlet, 100 * OxygenDissociation.SaturationAt(po2, BloodConditions.Standard), po2) with { PostPco2MmHg = Exact(35) };
        Assert.Equal(100 * shunt, MembraneLungAssessment.Of(now).ShuntPercent!.Value, 6);
    });

    [Fact]
    public void Carbon_dioxide_leaves_by_blood_and_by_gas()
    {
        MembraneLungReadings now = Lung(4, 65, 99, 400) with
        {
            PrePco2MmHg = Exact(48),
            PostPco2MmHg = Exact(35),
            BaseExcessMmolPerL = Exact(0),
            SweepLPerMin = Exact(4),
            ExhaustPco2MmHg = Exact(28),
        };
        MembraneLungPerformance does = MembraneLungAssessment.Of(now);
        double pre = CarbonDioxideContent.MlPerDl(48, BaseExcess.PhAt(48, 0, 10, 0.65), 10, 0.65, 37);
        double post = CarbonDioxideContent.MlPerDl(35, BaseExcess.PhAt(35, 0, 10, 0.99), 10, 0.99, 37);
        Assert.Equal(40 * (pre - post), does.CarbonDioxideTransferMlPerMin!.Value, 6);
        Assert.Equal(4000 * 273.15 / 293.15 * 28 / 713, does.CarbonDioxideExhaustedMlPerMin!.Value, 6);
        Assert.Equal(20, does.DeadSpacePercent!.Value, 9);
    }

    [Theory]
    [InlineData(199, 1.0, CriterionVerdict.Met)]
    [InlineData(200, 1.0, CriterionVerdict.NotMet)]
    [InlineData(150, 0.5, CriterionVerdict.NotMeasured)]
    public void The_oxygen_tension_is_a_sign_only_on_pure_oxygen(double po2, double fraction, CriterionVerdict verdict)
    {
        MembraneLungPerformance does = MembraneLungAssessment.Of(Lung(4, 65, 99, po2) with { SweepOxygenFraction = Exact(fraction) });
        CriterionJudgement sign = does.FailureSigns.Single(static s => s.Criterion == MembraneFailureSigns.PostPo2);
        Assert.Equal(verdict, sign.Verdict);
        Assert.Equal(verdict == CriterionVerdict.NotMeasured, sign.Words.Contains("cannot be judged", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_sign_is_judged_once_and_what_was_not_read_is_never_a_sign()
    {
        MembraneLungPerformance nothing = MembraneLungAssessment.Of(new MembraneLungReadings(Exact(4)));
        Assert.Equal(MembraneFailureSigns.All.Select(static c => c.Key), nothing.FailureSigns.Select(static s => s.Criterion.Key));
        Assert.All(nothing.FailureSigns, static s => Assert.Equal(CriterionVerdict.NotMeasured, s.Verdict));
        Assert.Null(nothing.OxygenTransferMlPerMin);
        Assert.Throws<InputFaultException>(static () => new MembraneLungReadings(Exact(4)) { SweepOxygenFraction = Exact(60) });
    }

    private static MembraneLungReadings Lung(double flow, double preSaturation, double postSaturation, double postPo2) => new(Exact(flow))
    {
        HaemoglobinGPerDl = Exact(10),
        Pre = new(Exact(preSaturation)),
        Post = new(Exact(postSaturation), Exact(postPo2)),
        SweepOxygenFraction = Exact(1),
    };

    private static MembraneLungReadings Pressures(double flow, double drop) => new(Exact(flow)) { PrePressureMmHg = Exact(200), PostPressureMmHg = Exact(200 - drop) };

    private static double Po2(double saturationPercent, double haemoglobin) => OxygenContent.Po2At(
        OxygenContent.FromPo2(haemoglobin, OxygenDissociation.Po2At(saturationPercent / 100, BloodConditions.Standard), BloodConditions.Standard, K), haemoglobin, BloodConditions.Standard, K);

    private static Estimate Exact(double value) => Estimate.Normal(value, 0, Origin.Measured);

    private static Estimate Read(double value, double sd) => Estimate.Normal(value, sd, Origin.Measured);
}
