using Cavaxis.Anatomy.Body;
using Cavaxis.Course.Events;
using Cavaxis.Course.FollowUp;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Configurations;
using CsCheck;

namespace Cavaxis.Course.Tests.FollowUp;

public class FollowUpPlanTests
{
    private static readonly DateTimeOffset Out = new(2031, 2, 10, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Every_item_says_why_and_when_with_a_source_and_times_that_say_they_are_custom()
    {
        Assert.All(FollowUpSchedule.Items, static i =>
        {
            Assert.NotEmpty(i.Sources);
            Assert.True(i.From < i.By);
            Assert.Equal(Quantities.Certainty.CommonPractice, i.TimingSource.Certainty);
        });
        Assert.Equal(FollowUpSchedule.Items.Count, FollowUpSchedule.Items.Select(static i => i.Key).Distinct().Count());
    }

    [Fact]
    public void While_cannulae_lie_nothing_is_due() => Assert.Empty(Plan(Placed("drainage", CannulaRole.Drainage)));

    [Fact]
    public void After_a_venous_cannula_the_veins_are_due_within_two_days_and_again_before_discharge()
    {
        IReadOnlyList<DueItem> due = Plan(Placed("drainage", CannulaRole.Drainage), Removed("drainage"));
        Assert.Equal(["vein-duplex-early", "vein-duplex-before-discharge"], due.Select(static d => d.Key));
        Assert.Equal((Out.AddHours(24), Out.AddHours(48)), (due[0].From, due[0].By));
        Assert.Equal(
            [DueState.Ahead, DueState.Due, DueState.Due, DueState.Overdue],
            new[] { Out.AddHours(23), Out.AddHours(24), Out.AddHours(48), Out.AddHours(49) }.Select(due[0].At));
    }

    [Fact]
    public void After_an_arterial_cannula_the_artery_is_due_and_the_vein_by_the_last_that_came_out()
    {
        IReadOnlyList<DueItem> due = Plan(
            Placed("drainage", CannulaRole.Drainage), Placed("return", CannulaRole.ArterialReturn), Removed("return"), (Out.AddHours(3), new CannulaRemoved { Cannula = "drainage", Method = RemovalMethod.SkinSuture }));
        Assert.Equal(["artery-duplex-early", "vein-duplex-early", "vein-duplex-before-discharge"], due.Select(static d => d.Key));
        Assert.Equal(Out.AddHours(51), due[1].By);
    }

    [Fact]
    public void An_examination_answers_the_item_that_it_names_if_it_comes_after_the_removal()
    {
        FollowUpFound found = new() { Item = "vein-duplex-early", Veins = [new VeinFinding { Vein = FollowUpVein.CommonFemoral, Side = BodySide.Right, Clot = ClotFinding.None }] };
        DueItem Early(DateTimeOffset at, FollowUpFound what) => Plan(Placed("drainage", CannulaRole.Drainage), Removed("drainage"), (at, what)).Single(static d => d.Key == "vein-duplex-early");
        Assert.Equal(DueState.Done, Early(Out.AddHours(30), found).At(Out.AddDays(9)));
        Assert.Equal(DueState.DoneLate, Early(Out.AddHours(60), found).At(Out.AddDays(9)));
        Assert.Equal(DueState.Overdue, Early(Out.AddHours(-1), found).At(Out.AddDays(9)));
        Assert.Equal(DueState.Overdue, Early(Out.AddHours(30), found with { Item = null }).At(Out.AddDays(9)));
    }

    [Theory]
    [InlineData(ClotFinding.None, false)]
    [InlineData(ClotFinding.NotSeen, false)]
    [InlineData(ClotFinding.Partial, true)]
    [InlineData(ClotFinding.Complete, true)]
    public void A_thrombus_calls_for_a_review_after_about_three_months_and_a_vein_not_seen_does_not(ClotFinding clot, bool review)
    {
        FollowUpFound found = new() { Item = "vein-duplex-early", Veins = [new VeinFinding { Vein = FollowUpVein.InternalJugular, Clot = clot }] };
        DueItem? due = Plan(Placed("drainage", CannulaRole.Drainage), Removed("drainage"), (Out.AddHours(30), found)).SingleOrDefault(static d => d.Key == "thrombus-review");
        Assert.Equal(review, due is not null);
        Assert.True(due is null || due.By == Out.AddHours(30).AddDays(100));
    }

    [Fact]
    public void What_the_team_planned_holds_in_place_of_the_schedule_and_beside_it()
    {
        FollowUpPlanned own = new() { Item = "vein-duplex-early", What = "duplex by the vascular team", DueFrom = "2031-02-11T08:00+01:00", DueBy = "2031-02-11T18:00+01:00" };
        IReadOnlyList<DueItem> due = Plan(
            Placed("drainage", CannulaRole.Drainage), Removed("drainage"), (Out, own), (Out, own with { Item = "clinic", What = "clinic", DueFrom = "2031-08-10T08:00Z", DueBy = "2031-08-20T08:00Z" }));
        DueItem early = due.Single(static d => d.Key == "vein-duplex-early");
        Assert.Equal((true, new DateTimeOffset(2031, 2, 11, 17, 0, 0, TimeSpan.Zero)), (early.IsPlanned, early.By));
        Assert.Null(due.Single(static d => d.Key == "clinic").Item);
        Assert.Equal(3, due.Count);
    }

    [Fact]
    public void An_item_is_at_every_moment_in_one_state_and_never_goes_back() =>
        Gen.Int[0, 4000].Array[1, 20].Sample(static hours =>
        {
            DueItem due = Plan(Placed("drainage", CannulaRole.Drainage), Removed("drainage"))[0];
            DueState[] states = [.. hours.Order().Select(h => due.At(Out.AddHours(h / 20.0)))];
            Assert.Equal(states.Order(), states);
        }, iter: 100);

    private static (DateTimeOffset, CourseEvent) Placed(string name, CannulaRole role) => (Out.AddDays(-9), new CannulaPlaced { Cannula = name, Role = role });

    private static (DateTimeOffset, CourseEvent) Removed(string name) => (Out, new CannulaRemoved { Cannula = name, Method = RemovalMethod.SkinSuture });

    private static IReadOnlyList<DueItem> Plan(params (DateTimeOffset At, CourseEvent Event)[] events) =>
        FollowUpPlan.Of(PatientCourse.Of(events.Select(static (e, i) => new CourseEntry(i + 1, e.At, e.At, "a", e.Event))));
}
