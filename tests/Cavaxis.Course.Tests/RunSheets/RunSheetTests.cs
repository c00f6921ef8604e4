using System.Text;
using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;
using Cavaxis.Course.RunSheets;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Course.Tests.RunSheets;

public class RunSheetTests
{
    private const string Bicaval = "ultrasound, bicaval";
    private const string Film = "chest film";
    private static readonly DateTimeOffset Chosen = new(2031, 2, 3, 4, 0, 0, TimeSpan.Zero);
    private static readonly SecondPerson Second = new() { Name = "Bo", Person = "bo" };

    private static readonly PlanChosen Plan = new()
    {
        Name = "invented",
        Configuration = ConfigurationKind.VvFemoralJugular,
        Steps =
        [
            new PlannedStep { Number = 1, Action = "Prepare." },
            new PlannedStep { Number = 2, Action = "Wire.", HardStop = "The wire is seen in the SVC.", ShowsIt = [new StepView { Words = Bicaval }], CannotShowIt = [new StepView { Words = Film }] },
            new PlannedStep { Number = 3, Action = "Dilate." },
            new PlannedStep { Number = 4, Action = "Cannula.", HardStop = "The wire is in view.", ShowsIt = [new StepView { Words = Bicaval }] },
            new PlannedStep { Number = 5, Action = "Fix." },
        ],
    };

    [Fact]
    public void A_step_behind_an_open_hard_stop_is_refused_and_told_which_evidence_is_missing()
    {
        StepDecision decision = Decide(Sheet(), Done(3));
        InputFault fault = Assert.Single(decision.Faults);
        Assert.Null(decision.Accepted);
        Assert.Equal((FaultCode.MissingField, "steps[2]"), (fault.Code, fault.Field));
        Assert.Contains("The wire is seen in the SVC.", fault.Accepted, StringComparison.Ordinal);
        Assert.Equal(2, Decide(Sheet(), Done(5)).Faults.Count);
    }

    [Fact]
    public void A_step_behind_a_hard_stop_that_was_passed_is_taken()
    {
        StepDone wire = Stop(2);
        Assert.Same(wire, Decide(Sheet(), wire).Accepted);
        Assert.NotNull(Decide(Sheet(wire), Done(3)).Accepted);
        Assert.Equal(3, Sheet(Done(1), wire).Next!.Planned.Number);
        Assert.Equal(4, Sheet(wire).HoldingAt!.Planned.Number);
    }

    [Theory]
    [InlineData("seen")]
    [InlineData("view")]
    [InlineData("confirmedBy")]
    public void A_hard_stop_needs_what_was_seen_a_view_that_shows_it_and_a_second_person(string missing)
    {
        StepDone wire = Stop(2);
        StepDone without = missing switch
        {
            "seen" => wire with { Seen = null },
            "view" => wire with { View = null },
            _ => wire with { ConfirmedBy = null },
        };
        InputFault fault = Assert.Single(Decide(Sheet(), without).Faults);
        Assert.Equal((FaultCode.MissingField, missing), (fault.Code, fault.Field));
    }

    [Fact]
    public void A_view_that_cannot_show_it_is_no_evidence_even_with_a_reason_and_another_view_only_with_one()
    {
        StepDeviation reason = new() { What = "another view", Reason = "no window" };
        Assert.Equal("view", Assert.Single(Decide(Sheet(), Stop(2) with { View = Film }).Faults).Field);
        Assert.Equal("view", Assert.Single(Decide(Sheet(), Stop(2) with { View = Film, Deviation = reason }).Faults).Field);
        Assert.Equal("view", Assert.Single(Decide(Sheet(), Stop(2) with { View = "direct sight" }).Faults).Field);
        StepDone otherwise = Stop(2) with { View = "direct sight", Deviation = reason };
        Assert.NotNull(Decide(Sheet(), otherwise).Accepted);
        Assert.Equal(StepState.DoneOtherwise, Assert.Single(Sheet(otherwise).Overridden).State);
    }

    [Theory]
    [InlineData("Anna", null)]
    [InlineData(" anna ", null)]
    [InlineData("Someone", "ANNA.A")]
    [InlineData("anna.a", null)]
    public void The_second_person_is_not_the_first_however_they_are_written(string name, string? person)
    {
        InputFault fault = Assert.Single(Decide(Sheet(), Stop(2) with { ConfirmedBy = new SecondPerson { Name = name, Person = person } }).Faults);
        Assert.Equal((FaultCode.Contradiction, "confirmedBy"), (fault.Code, fault.Field));
    }

    [Fact]
    public void A_programme_may_do_with_one_person() =>
        Assert.NotNull(Decide(Sheet(), Stop(2) with { ConfirmedBy = null }, rules: ProgrammeRules.OnePerson("one doctor at night")).Accepted);

    [Fact]
    public void A_hard_stop_is_passed_over_only_with_a_reason_and_by_two_and_stays_visible()
    {
        StepSkipped skip = new() { PlanEntry = 2, Step = 2, Action = "Wire.", Reason = "arrest, no image to be had", ConfirmedBy = Second };
        Assert.Equal("reason", Assert.Single(Decide(Sheet(), skip with { Reason = " " }).Faults).Field);
        Assert.Equal("confirmedBy", Assert.Single(Decide(Sheet(), skip with { ConfirmedBy = null }).Faults).Field);
        Assert.NotNull(Decide(Sheet(), skip).Accepted);
        Assert.Equal(StepState.Skipped, Assert.Single(Sheet(skip).Overridden).State);
        Assert.NotNull(Decide(Sheet(skip), Done(3)).Accepted);
    }

    [Fact]
    public void A_step_is_closed_once_has_the_words_that_were_shown_and_belongs_to_the_plan_in_force()
    {
        Assert.Equal("step", Assert.Single(Decide(Sheet(Done(1)), Done(1)).Faults).Field);
        Assert.Equal("action", Assert.Single(Decide(Sheet(), Done(1) with { Action = "Other." }).Faults).Field);
        Assert.Equal("planEntry", Assert.Single(Decide(Sheet(), Done(1) with { PlanEntry = 7 }).Faults).Field);
        Assert.Equal((FaultCode.NotFound, "step"), Assert.Single(Decide(Sheet(), Done(1) with { Step = 6 }).Faults) is var f ? (f.Code, f.Field) : default);
    }

    [Fact]
    public void Nothing_happened_before_the_plan_was_chosen_or_before_the_hard_stop_in_front_of_it()
    {
        Assert.Equal("occurredAt", Assert.Single(Decide(Sheet(), Done(1), minute: -1).Faults).Field);
        Assert.Equal("occurredAt", Assert.Single(Decide(Sheet(Stop(2)), Done(3), minute: 0).Faults).Field);
    }

    [Fact]
    public void However_attempts_come_no_step_is_ever_closed_behind_an_open_hard_stop() =>
        Gen.Select(Gen.Int[1, 5], Gen.Bool, Gen.Bool, Gen.Bool).Array[0, 30].Sample(static attempts =>
        {
            List<CourseEvent> accepted = [];
            foreach ((int step, bool skip, bool evidence, bool second) in attempts)
            {
                CourseEvent attempt = skip
                    ? new StepSkipped { PlanEntry = 2, Step = step, Action = Plan.Steps[step - 1].Action, Reason = "chance", ConfirmedBy = second ? Second : null }
                    : Stop(step) with { View = evidence ? Bicaval : null, ConfirmedBy = second ? Second : null };
                StepDecision decision = RunSheetRule.Decide(Sheet([.. accepted]), new StepAttempt(attempt, "anna.a", "Anna", Chosen.AddMinutes(accepted.Count + 1)), ProgrammeRules.Usual);
                Assert.NotEqual(decision.Accepted is null, decision.Faults.Count == 0);
                if (decision.Accepted is CourseEvent taken)
                {
                    accepted.Add(taken);
                }
            }

            RunSheet sheet = Sheet([.. accepted]);
            int held = sheet.HoldingAt?.Planned.Number ?? int.MaxValue;
            Assert.All(sheet.Steps.Where(s => s.State != StepState.Open), s => Assert.True(s.Planned.Number < held));
            Assert.All(sheet.Steps.Where(static s => s is { IsHardStop: true, Done: not null }), static s => Assert.True(s.Done!.Event is { View: Bicaval, ConfirmedBy: not null }));
            Assert.Equal(accepted.Count, sheet.Steps.Count(static s => s.State != StepState.Open));
        }, iter: 500);

    [Fact]
    public void Times_between_steps_are_told()
    {
        RunSheet sheet = Sheet(Done(1), Stop(2), Done(3));
        Assert.Equal([null, TimeSpan.FromMinutes(1), TimeSpan.FromMinutes(1), null, null], sheet.Steps.Select(static s => s.SincePrevious));
        Assert.False(sheet.IsThrough);
    }

    [Fact]
    public void The_sheet_of_a_computed_plan_holds_its_steps_word_for_word_and_reads_back()
    {
        CaseFile file = CaseFileReader.Read(Encoding.UTF8.GetBytes("""{"cavaxisCase":1,"invented":true,"patient":{"ageYears":40,"sex":"male","heightCm":180,"weightKg":80}}"""));
        PlanningResult result = Planner.Plan(file, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, new PlanningOptions { Circulation = false, Anatomies = 500 });
        PlanChosen chosen = PlanSteps.Choose(result.Plans[result.ChosenPlan - 1], result.Steps, 2, "first in the list");
        PlanChosen read = (PlanChosen)CourseEventJson.Read("course.plan-chosen", CourseEventJson.Write(chosen).Span);
        Assert.Equal(result.Steps.Select(static s => (s.Number, s.Action, s.HardStop, string.Join('|', s.ShowsIt))), read.Steps.Select(static s => (s.Number, s.Action, s.HardStop, string.Join('|', s.ShowsIt.Select(static v => v.Words)))));
        RunSheet sheet = PatientCourse.Of([new CourseEntry(2, Chosen, Chosen, "a", read)]).RunSheet!;
        Assert.Contains(sheet.Steps, static s => s.Holds);

        // The first hard stop is about the device in the hand and needs no view.
        Assert.Equal([1], sheet.Steps.Where(static s => s.IsHardStop && s.Planned.ShowsIt.Count == 0).Select(static s => s.Planned.Number));
        StepDone first = new() { PlanEntry = 2, Step = 1, Action = sheet.Steps[0].Planned.Action, Seen = "as planned", ConfirmedBy = Second };
        Assert.NotNull(Decide(sheet, first).Accepted);
        Assert.Equal("seen", Assert.Single(Decide(sheet, first with { Seen = null }).Faults).Field);
    }

    private static StepDone Done(int step) => new() { PlanEntry = 2, Step = step, Action = Plan.Steps[step - 1].Action };

    private static StepDone Stop(int step) => Done(step) with { View = Bicaval, Seen = "wire in the SVC", ConfirmedBy = Second };

    private static StepDecision Decide(RunSheet sheet, CourseEvent attempt, int minute = 30, ProgrammeRules? rules = null) =>
        RunSheetRule.Decide(sheet, new StepAttempt(attempt, "anna.a", "Anna", Chosen.AddMinutes(minute)), rules ?? ProgrammeRules.Usual);

    private static RunSheet Sheet(params CourseEvent[] closed) => PatientCourse.Of(
        [new CourseEntry(2, Chosen, Chosen, "a", Plan), .. closed.Select(static (e, i) => new CourseEntry(3 + i, Chosen.AddMinutes(i + 1), Chosen, "a", e))]).RunSheet!;
}
