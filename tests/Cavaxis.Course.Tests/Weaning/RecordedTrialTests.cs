using Cavaxis.Anatomy.Body;
using Cavaxis.Course.Criteria;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Course.Weaning;
using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Tests.Weaning;

public class RecordedTrialTests
{
    private static readonly DateTimeOffset Start = new(2031, 2, 3, 8, 0, 0, TimeSpan.Zero);

    [Fact]
    public void A_step_ends_when_it_was_written_down_and_lasted_as_noted()
    {
        WeaningTrial trial = RecordedTrial.Of(Log(WeaningMethod.FlowSteps, [], Step(15, 3.0, 10), Step(40, 1.2, 12)), null)!;
        Assert.Equal(WeaningKind.VenoArterialFlow, trial.Kind);
        Assert.Equal([5.0, 28.0], trial.Steps.Select(static s => s.StartMinute));
        Assert.Equal([10.0, 12.0], trial.Steps.Select(static s => s.DurationMin));
    }

    [Fact]
    public void A_step_never_reaches_back_into_the_one_before_it()
    {
        WeaningTrial trial = RecordedTrial.Of(Log(WeaningMethod.FlowSteps, [], Step(15, 3.0, null), Step(20, 1.2, 60)), null)!;
        Assert.Equal([0.0, 15.0], trial.Steps.Select(static s => s.StartMinute));
        Assert.Equal([15.0, 5.0], trial.Steps.Select(static s => s.DurationMin));
    }

    [Fact]
    public void What_was_read_before_is_the_first_step_and_answers_the_entry_criteria()
    {
        Reading[] before = [Reading.Of(ObservedQuantity.PumpFlowLPerMin, 4), Reading.Of(ObservedQuantity.MeanArterialPressureMmHg, 75)];
        WeaningTrial trial = RecordedTrial.Of(Log(WeaningMethod.FlowSteps, before, Step(15, 1.2, 15)), null)!;
        Assert.Equal(4, trial.Steps[0].FlowLPerMin);
        Assert.Equal(0, trial.Steps[0].DurationMin);
        WeaningFinding pressure = WeaningJudge.Judge(trial).Entry.First(static f => f.Criterion.Quantity == WeaningQuantity.MeanArterialPressureMmHg);
        Assert.Equal(CriterionVerdict.Met, pressure.Judgement.Verdict);
    }

    [Fact]
    public void A_method_without_published_criteria_and_a_trial_without_readings_are_not_judged()
    {
        Assert.Null(RecordedTrial.Of(Log(WeaningMethod.Other, [], Step(15, 1.2, 15)), null));
        Assert.Null(RecordedTrial.Of(Log(WeaningMethod.SweepSteps, []), null));
    }

    // 50 + 0.91 (180 − 152.4) = 75.116 and 45.5 + 0.91 (160 − 152.4) = 52.416 kg, by hand from the published line (from memory).
    [Theory]
    [InlineData(Sex.Male, 180, 40, 75.116)]
    [InlineData(Sex.Female, 160, 40, 52.416)]
    [InlineData(Sex.Female, 160, 12, null)]
    [InlineData(Sex.Male, 129, 40, null)]
    public void The_predicted_weight_follows_the_published_line_for_grown_people(Sex sex, double heightCm, double years, double? expectedKg)
    {
        double? kg = PredictedBodyWeight.KgOf(new PatientSection { AgeYears = years, Sex = sex, HeightCm = heightCm, WeightKg = 60 });
        Assert.Equal(expectedKg is null, kg is null);
        Assert.Equal(expectedKg ?? 0, kg ?? 0, 9);
    }

    private static WeaningTrialLog Log(WeaningMethod method, IReadOnlyList<Reading> before, params Logged<WeaningStepped>[] steps) =>
        new(new Logged<WeaningStarted>(1, Start, "Rhea (invented)", new WeaningStarted { Method = method, Readings = before }), steps, null);

    private static Logged<WeaningStepped> Step(double minute, double flow, double? held) => new(
        (long)minute + 1, Start.AddMinutes(minute), "Rhea (invented)",
        new WeaningStepped { TrialEntry = 1, FlowLPerMin = flow, MinutesHeld = held, Readings = [Reading.Of(ObservedQuantity.OutflowVtiCm, 12)] });
}
