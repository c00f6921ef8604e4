using Cavaxis.Bedside.Programmes;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Outcomes;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;

namespace Cavaxis.Bedside.Tests.Programmes;

/// <summary>What a record says of each outcome, by the table of docs/models/outcomes.md. Everything is invented.</summary>
public class CourseOutcomesTests
{
    private static readonly DateTimeOffset Start = new(2031, 2, 3, 4, 0, 0, TimeSpan.Zero);

    public static TheoryData<OutcomeKind, bool?> Noted => new()
    {
        { OutcomeKind.SurvivedToDischarge, true },
        { OutcomeKind.DiedWithin90Days, true },
        { OutcomeKind.DiedOnSupport, false },
        { OutcomeKind.DiedAfterSupport, false },
        { OutcomeKind.WeanedFromSupport, null },
        { OutcomeKind.TransferredOut, null },
        { OutcomeKind.BridgedToDevice, null },
        { OutcomeKind.LostToFollowUp, null },
        { OutcomeKind.AliveAt90Days, null },
    };

    [Theory]
    [MemberData(nameof(Noted))]
    public void Survival_is_known_only_where_an_entry_tells_of_discharge(OutcomeKind noted, bool? survived) =>
        Assert.Equal(survived, Of(Ended(SupportEndReason.Recovered), (400, new OutcomeNoted { Outcome = noted })).Known(CountedOutcome.SurvivedToDischarge));

    [Fact]
    public void Of_two_outcomes_that_contradict_the_later_one_holds_and_one_that_does_not_tell_changes_nothing()
    {
        (int, CourseEvent) left = (500, new OutcomeNoted { Outcome = OutcomeKind.SurvivedToDischarge });
        (int, CourseEvent) died = (400, new OutcomeNoted { Outcome = OutcomeKind.DiedAfterSupport });
        Assert.True(Of(Ended(SupportEndReason.Recovered), died, left).Known(CountedOutcome.SurvivedToDischarge));
        Assert.True(Of(Ended(SupportEndReason.Recovered), left, (900, new OutcomeNoted { Outcome = OutcomeKind.LostToFollowUp })).Known(CountedOutcome.SurvivedToDischarge));
        Assert.False(Of(Ended(SupportEndReason.Died)).Known(CountedOutcome.SurvivedToDischarge));
    }

    [Theory]
    [InlineData(SupportEndReason.Recovered, 124, true)]
    [InlineData(SupportEndReason.Recovered, 123, null)]
    [InlineData(SupportEndReason.Died, 900, false)]
    [InlineData(SupportEndReason.Withdrawn, 900, false)]
    [InlineData(SupportEndReason.Bridged, 900, false)]
    [InlineData(SupportEndReason.Transferred, 900, null)]
    [InlineData(SupportEndReason.Other, 900, null)]
    public void Weaned_means_support_removed_and_a_day_lived(SupportEndReason reason, int nowHour, bool? weaned) =>
        Assert.Equal(weaned, new Told(Course(Ended(reason)), nowHour).Known(CountedOutcome.Weaned));

    [Theory]
    [InlineData(120, false)]
    [InlineData(130, true)]
    public void A_death_within_a_day_of_the_end_is_no_weaning(int diedHour, bool weaned) =>
        Assert.Equal(weaned, Of(Ended(SupportEndReason.Recovered), (diedHour, new OutcomeNoted { Outcome = OutcomeKind.DiedAfterSupport })).Known(CountedOutcome.Weaned));

    [Fact]
    public void Malposition_and_thrombosis_are_known_only_where_someone_looked()
    {
        (int, CourseEvent) placed = (1, new CannulaPlaced { Cannula = "drainage", Role = CannulaRole.Drainage });
        Told nobody = Of(Ended(SupportEndReason.Recovered), placed);
        Assert.Equal((null, null), (nobody.Known(CountedOutcome.Malposition), nobody.Known(CountedOutcome.VenousThrombosis)));
        Assert.Null(Of(placed, (2, Position(PositionSight.SkinMark))).Known(CountedOutcome.Malposition));
        Assert.False(Of(placed, (2, Position(PositionSight.PlainFilm))).Known(CountedOutcome.Malposition));
        Assert.True(Of((3, Seen(ComplicationKind.CannulaMalposition, ComplicationGravity.Procedure))).Known(CountedOutcome.Malposition));
        Assert.Null(Of(Ended(SupportEndReason.Recovered), (300, Veins(ClotFinding.NotSeen))).Known(CountedOutcome.VenousThrombosis));
        Assert.False(Of(Ended(SupportEndReason.Recovered), (300, Veins(ClotFinding.None, ClotFinding.NotSeen))).Known(CountedOutcome.VenousThrombosis));
        Assert.True(Of(Ended(SupportEndReason.Recovered), (300, Veins(ClotFinding.None, ClotFinding.Partial))).Known(CountedOutcome.VenousThrombosis));
    }

    [Fact]
    public void Another_complication_is_none_only_once_support_has_ended_and_nobody_wrote_it_down()
    {
        CountedOutcome[] kinds = [CountedOutcome.LimbIschaemia, CountedOutcome.Bleeding, CountedOutcome.Haemolysis, CountedOutcome.Stroke, CountedOutcome.CircuitExchange, CountedOutcome.Infection];
        Assert.All(kinds, static k => Assert.Null(Of().Known(k)));
        Assert.All(kinds, static k => Assert.False(Of(Ended(SupportEndReason.Recovered)).Known(k)));
        Assert.False(Of(Ended(SupportEndReason.Recovered), (5, Seen(ComplicationKind.LimbIschaemia, ComplicationGravity.Watched))).Known(CountedOutcome.LimbIschaemia));
        Assert.True(Of((5, Seen(ComplicationKind.LimbIschaemia, ComplicationGravity.Treated))).Known(CountedOutcome.LimbIschaemia));
        Assert.True(Of((5, Seen(ComplicationKind.IntracranialBleeding, ComplicationGravity.Watched))).Known(CountedOutcome.Stroke));
        Assert.False(Of(Ended(SupportEndReason.Recovered), (5, Free(500))).Known(CountedOutcome.Haemolysis));
        Assert.True(Of((5, Free(501))).Known(CountedOutcome.Haemolysis));
    }

    private static (int Hour, CourseEvent Event) Ended(SupportEndReason reason) => (100, new SupportEnded { Reason = reason });

    private static ComplicationSeen Seen(ComplicationKind kind, ComplicationGravity gravity) => new() { Complication = kind, Gravity = gravity };

    private static PositionRead Position(PositionSight sight) => new() { Cannula = "drainage", DepthCm = 40, SeenBy = sight };

    private static FollowUpFound Veins(params ClotFinding[] found) => new() { Veins = [.. found.Select(static f => new VeinFinding { Vein = FollowUpVein.CommonFemoral, Clot = f })] };

    private static Observed Free(double mgPerL) => new() { Readings = [Reading.Of(ObservedQuantity.FreeHaemoglobinMgPerL, mgPerL)] };

    private static Told Of(params (int Hour, CourseEvent Event)[] events) => new(Course(events), 10_000);

    private static PatientCourse Course(params (int Hour, CourseEvent Event)[] events) => PatientCourse.Of(
        events.Prepend((0, new SupportStarted { Configuration = RunningConfiguration.VvTwoSite })).Select(static (e, i) => new CourseEntry(i + 2, Start.AddHours(e.Item1), Start.AddHours(e.Item1), "cleo", e.Item2)));

    private sealed record Told(PatientCourse Course, int NowHour)
    {
        public bool? Known(CountedOutcome kind) => CourseOutcomes.Of(Course, Start.AddHours(NowHour)).TryGetValue(kind, out bool happened) ? happened : null;
    }
}
