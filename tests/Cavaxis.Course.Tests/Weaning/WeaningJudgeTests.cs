using System.Globalization;
using Cavaxis.Course.Criteria;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Weaning;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Tests.Weaning;

public class WeaningJudgeTests
{
    public static TheoryData<string> Keys => [.. WeaningCriteria.Published.Select(static c => c.Criterion.Key)];

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_published_criterion_turns_at_its_threshold(string key)
    {
        WeaningCriterion criterion = WeaningCriteria.Published.Single(c => c.Criterion.Key == key);
        Criterion side = criterion.Criterion;
        bool upwards = side.Comparison is CriterionComparison.AtLeast or CriterionComparison.Above;
        bool itself = side.Comparison is CriterionComparison.AtLeast or CriterionComparison.AtMost;
        const double Little = 1e-6;
        Assert.True(Met(criterion, side.Threshold + (upwards ? Little : -Little)));
        Assert.False(Met(criterion, side.Threshold + (upwards ? -Little : Little)));
        Assert.Equal(itself, Met(criterion, side.Threshold));
    }

    [Fact]
    public void Keys_are_unique_and_every_criterion_has_a_source() => Assert.All(
        WeaningCriteria.Published.GroupBy(static c => c.Criterion.Key),
        static group => Assert.True(group.Single().Criterion.Source.Citation.Length > 5 && char.IsLower(group.Key[0])));

    [Fact]
    public void What_nobody_measured_is_never_met()
    {
        foreach (WeaningKind kind in Enum.GetValues<WeaningKind>())
        {
            WeaningJudgement judged = WeaningJudge.Judge(new(kind, [new(0, 60, 1.2, 0, [])]));
            Assert.NotNull(judged.Tested);
            Assert.All(judged.Success.Concat(judged.Entry), static f => Assert.Equal(CriterionVerdict.NotMeasured, f.Judgement.Verdict));
            Assert.Contains($"0 of {judged.Success.Count}", judged.Words, StringComparison.Ordinal);
            Assert.Empty(judged.Stops);
        }
    }

    [Theory]
    [InlineData(1.5, true)]
    [InlineData(1.51, false)]
    public void Flow_above_the_tested_flow_tests_nothing(double flow, bool tested)
    {
        WeaningJudgement judged = WeaningJudge.Judge(new(WeaningKind.VenoArterialFlow, [new(0, 15, 4, null, []), new(15, 15, flow, null, [Read(WeaningQuantity.OutflowVtiCm, 14)])]));
        Assert.Equal(tested, judged.Tested is not null);
        Assert.Equal(tested ? CriterionVerdict.Met : CriterionVerdict.NotMeasured, Of(judged, WeaningQuantity.OutflowVtiCm).Judgement.Verdict);
        Assert.Equal(!tested, judged.Deviations.Any(static d => d.Contains("not brought down", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(0.0, true)]
    [InlineData(0.1, false)]
    [InlineData(null, false)]
    public void A_sweep_that_is_not_known_to_be_off_tests_nothing(double? sweep, bool tested)
    {
        WeaningJudgement judged = WeaningJudge.Judge(new(WeaningKind.VenoVenousSweep, [new(0, 120, 3, sweep, [Read(WeaningQuantity.RightArmPo2MmHg, 90)])]));
        Assert.Equal(tested, judged.Tested is not null);
        Assert.Equal(tested, Of(judged, WeaningQuantity.RightArmPo2MmHg).Judgement.Verdict == CriterionVerdict.Met);
    }

    [Fact]
    public void A_whole_trial_says_what_was_met_and_never_what_to_do()
    {
        WeaningJudgement judged = WeaningJudge.Judge(new(WeaningKind.VenoArterialFlow,
        [
            new(0, 15, 4.2, 4, [Read(WeaningQuantity.MeanArterialPressureMmHg, 72), Read(WeaningQuantity.VasoactiveInotropicScore, 4)]),
            new(15, 15, 2.8, 4, [Read(WeaningQuantity.MeanArterialPressureMmHg, 70)]),
            new(30, 15, 1.4, 3, [Read(WeaningQuantity.MeanArterialPressureMmHg, 58), Read(WeaningQuantity.OutflowVtiCm, 11, 1), Read(WeaningQuantity.EjectionFractionPercent, 23, 6), Read(WeaningQuantity.LateralMitralVelocityCmPerS, 7, 0.8)]),
        ]));
        Assert.Equal(30, judged.Tested!.StartMinute);
        Assert.Equal(2, judged.Entry.Count(static f => f.Judgement.Verdict == CriterionVerdict.Met));
        Assert.Equal([WeaningQuantity.OutflowVtiCm, WeaningQuantity.LateralMitralVelocityCmPerS], judged.Success.Where(static f => f.Judgement.Verdict == CriterionVerdict.Met).Select(static f => f.Criterion.Quantity));
        Assert.Contains("the other way round at 20 %", Of(judged, WeaningQuantity.EjectionFractionPercent).Judgement.Words, StringComparison.Ordinal);
        Assert.Contains("the other way round at 10 cm/s", Of(judged, WeaningQuantity.LateralMitralVelocityCmPerS).Judgement.Words, StringComparison.Ordinal);
        Assert.Equal(30, Assert.Single(judged.Stops).StartMinute);
        Assert.Contains("2 of 7 published criteria were met at the lowest flow (2 of them within the error of the reading)", judged.Words, StringComparison.Ordinal);
        Assert.Contains("not measured: tricuspid", judged.Words, StringComparison.Ordinal);
        Assert.EndsWith("The decision is with the clinicians at the bedside.", judged.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("remove", judged.Words, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("should", judged.Words, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("safe", judged.Words, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Deviations_from_the_protocol_are_told()
    {
        WeaningJudgement judged = WeaningJudge.Judge(new(WeaningKind.VenoVenousSweep, [new(0, 30, 1.8, null, []), new(30, 20, 3, 0, [])]));
        Assert.Equal(3, judged.Deviations.Count);
        Assert.Contains("held for 20 min", judged.Deviations[0], StringComparison.Ordinal);
        Assert.Contains("1.8 L/min", judged.Deviations[1], StringComparison.Ordinal);
        Assert.Contains("not noted", judged.Deviations[2], StringComparison.Ordinal);
    }

    [Fact]
    public void A_flow_that_was_not_noted_or_ran_backwards_is_told()
    {
        WeaningJudgement unknown = WeaningJudge.Judge(new(WeaningKind.VenoArterialFlow, [new(0, 15, null, 3, [])]));
        Assert.Null(unknown.Tested);
        Assert.Contains("no flow was noted", unknown.Words, StringComparison.Ordinal);
        WeaningJudgement backwards = WeaningJudge.Judge(new(WeaningKind.VenoArterialFlow, [new(0, 15, 4, 3, []), new(15, 30, -0.7, 0, [])]));
        Assert.Equal(15, backwards.Tested!.StartMinute);
        Assert.Contains("ran backwards", Assert.Single(backwards.Deviations), StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_of_the_bedside_become_those_of_the_trial()
    {
        IReadOnlyList<WeaningReading> readings = WeaningReadings.From(
            [Reading.Of(ObservedQuantity.OutflowVtiCm, 11, 0.5), Reading.Of(ObservedQuantity.TidalVolumeMl, 420), Reading.Of(ObservedQuantity.LactateMmolPerL, 1), Reading.Of(ObservedQuantity.InspiredOxygenFraction, 0.5)], 70);
        Assert.Equal([WeaningQuantity.OutflowVtiCm, WeaningQuantity.TidalVolumeMlPerKg, WeaningQuantity.InspiredOxygenFraction], readings.Select(static r => r.Quantity));
        Assert.Equal((11, 0.5), (readings[0].Value.Value, readings[0].Value.Sd));
        Assert.Equal(6, readings[1].Value.Value, 12);
        Assert.Equal(QuantityTable.Of(ObservedQuantity.TidalVolumeMl).UsualSd / 70, readings[1].Value.Sd, 12);
        Assert.Single(WeaningReadings.From([Reading.Of(ObservedQuantity.OutflowVtiCm, 11), Reading.Of(ObservedQuantity.TidalVolumeMl, 420)], null));
    }

    [Theory]
    [InlineData(12, "more than expected")]
    [InlineData(9, "as expected within the error")]
    [InlineData(5, "less than expected")]
    public void A_reading_stands_beside_what_the_model_expected(double read, string verdict)
    {
        WeaningStep step = new(0, 15, 1.4, null, [Read(WeaningQuantity.OutflowVtiCm, read, 0.6)])
        {
            Expected = [new(WeaningQuantity.OutflowVtiCm, Estimate.Normal(9, 0.8, Origin.Estimated)), new(WeaningQuantity.CentralVenousPressureMmHg, Estimate.Normal(9, 2, Origin.Estimated))],
        };
        WeaningJudgement judged = WeaningJudge.Judge(new(WeaningKind.VenoArterialFlow, [step]));
        Assert.Contains(verdict, judged.Comparisons[0].Words, StringComparison.Ordinal);
        Assert.Equal(read - 9, judged.Comparisons[0].StandardDeviationsApart!.Value, 9);
        Assert.Null(judged.Comparisons[1].Observed);
        Assert.Contains("was not taken", judged.Comparisons[1].Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_programme_may_judge_by_its_own_criteria()
    {
        Criterion strict = new("own", "velocity-time integral of the outflow", CriterionComparison.AtLeast, 12, "cm", new Source("this programme", Certainty.Assumption));
        WeaningJudgement judged = WeaningJudge.Judge(
            new(WeaningKind.VenoArterialFlow, [new(0, 15, 1.4, null, [Read(WeaningQuantity.OutflowVtiCm, 11)])]),
            [new(WeaningKind.VenoArterialFlow, WeaningRole.Success, WeaningQuantity.OutflowVtiCm, strict)]);
        Assert.Equal(CriterionVerdict.NotMet, Assert.Single(judged.Success).Judgement.Verdict);
    }

    [Fact]
    public void A_trial_that_cannot_be_is_refused_with_the_place()
    {
        Assert.Equal(FaultCode.MissingField, Fault(static () => new WeaningTrial(WeaningKind.VenoVenousSweep, [])).Code);
        InputFault overlap = Fault(static () => new WeaningTrial(WeaningKind.VenoArterialFlow, [new(0, 15, 4, null, []), new(10, 15, 2, null, [])]));
        Assert.Equal((FaultCode.Contradiction, "steps[1].startMinute"), (overlap.Code, overlap.Field));
        Assert.Equal("flowLPerMin", Fault(static () => new WeaningStep(0, 15, 42, null, [])).Field);
        Assert.Equal("sweepLPerMin", Fault(static () => new WeaningStep(0, 15, 4, -1, [])).Field);
        Assert.Equal(FaultCode.DuplicateField, Fault(static () => new WeaningStep(0, 15, 4, null, [Read(WeaningQuantity.OutflowVtiCm, 9), Read(WeaningQuantity.OutflowVtiCm, 10)])).Code);
    }

    [Fact]
    public void What_is_observed_at_other_times_too_bears_the_same_name_and_unit()
    {
        string[] alone = ["TricuspidExcursionMm", "RightEjectionFractionPercent", "VasoactiveInotropicScore", "TidalVolumeMlPerKg", "OesophagealSwingCmH2O"];
        Assert.All(Enum.GetNames<WeaningQuantity>().Except(alone), static name => Assert.True(Enum.TryParse<ObservedQuantity>(name, out _), name));
        Assert.All(WeaningCriteria.Published.Where(c => Enum.TryParse<ObservedQuantity>(c.Quantity.ToString(), out _)), static c => Assert.Equal(
            QuantityTable.Of(Enum.Parse<ObservedQuantity>(c.Quantity.ToString())).Unit, c.Criterion.Unit));
    }

    [Fact]
    public void Protocols_are_whole() => Assert.All(Enum.GetValues<WeaningKind>(), static kind =>
    {
        WeaningProtocol protocol = WeaningProtocol.Of(kind);
        Assert.Equal(kind, protocol.Kind);
        Assert.True(protocol.Sources.Count > 0 && protocol.Steps.All(static s => s.ShortestMin <= s.LongestMin));
        Assert.True(protocol.ShortestTestMin <= protocol.Steps[^1].LongestMin, protocol.ShortestTestMin.ToString(CultureInfo.InvariantCulture));
    });

    private static bool Met(WeaningCriterion criterion, double value)
    {
        WeaningStep step = new(0, 120, 1.4, 0, [Read(criterion.Quantity, value)]);
        WeaningJudgement judged = WeaningJudge.Judge(new(criterion.Kind, [step]));
        IEnumerable<WeaningFinding> asked = criterion.Role switch
        {
            WeaningRole.Entry => judged.Entry,
            WeaningRole.Success => judged.Success,
            _ => judged.Stops,
        };
        return asked.Any(f => f.Criterion == criterion && f.Judgement.Verdict == CriterionVerdict.Met);
    }

    private static WeaningFinding Of(WeaningJudgement judged, WeaningQuantity quantity) => judged.Success.Single(f => f.Criterion.Quantity == quantity);

    private static InputFault Fault(Func<object> make) => Assert.Throws<InputFaultException>(() => make()).Faults[0];

    private static WeaningReading Read(WeaningQuantity quantity, double value, double sd = 0) => new(quantity, Estimate.Normal(value, sd, Origin.Measured));
}
