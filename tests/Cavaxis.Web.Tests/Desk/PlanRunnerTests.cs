using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Web.CaseTexts;
using Cavaxis.Web.Desk;

namespace Cavaxis.Web.Tests.Desk;

public class PlanRunnerTests
{
    private static readonly string Json = Cavaxis.Web.Shelf.DemoCases.All().Single(static c => c.Json.Contains("\"Tall man", StringComparison.Ordinal)).Json;

    [Fact]
    public async Task A_plan_that_nobody_waits_for_any_more_is_broken_off_and_can_be_asked_for_again()
    {
        using PlanRunner runner = new();
        CaseFile file = CaseCheck.Of(Json).Case!;
        using CancellationTokenSource left = new();
        Task<PlanningResult> plan = runner.PlanAsync(file, Json, 1, circulation: true, left.Token);
        await left.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => plan);
        Assert.Null(runner.Known(Json, 1, circulation: true));

        PlanningResult again = await runner.PlanAsync(file, Json, 1, circulation: true, CancellationToken.None);
        Assert.All(again.Plans, static p => Assert.True(p.Circulation is not null || p.CirculationNote is { Length: > 0 }));
        Assert.Same(again, runner.Known(Json, 1, circulation: true));
    }

    [Fact]
    public async Task The_circulation_ends_while_it_is_computed_and_the_row_is_free_for_the_next()
    {
        using PlanRunner runner = new();
        CaseFile file = CaseCheck.Of(Json).Case!;
        await runner.PlanAsync(file, Json, 1, circulation: false, CancellationToken.None);
        using CancellationTokenSource left = new();
        Task<PlanningResult> slow = runner.PlanAsync(file, Json, 1, circulation: true, left.Token);

        // It has begun when the row is taken: a second one for the same case waits behind it and gives the word to end the first.
        Task<PlanningResult> behind = runner.PlanAsync(file, Json, 1, circulation: true, CancellationToken.None);
        await Task.Delay(300);
        Assert.False(slow.IsCompleted);
        await left.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => slow);
        Assert.False(behind.IsCompleted);
        Assert.NotEmpty((await behind).Plans);
    }

    [Fact]
    public void A_change_that_comes_after_a_window_was_left_plans_nothing_and_ends_nothing()
    {
        using PlanRunner runner = new();
        PlanDesk desk = new(runner);
        desk.Dispose();
        desk.Begin(CaseCheck.Of(Json).Case, Json);
        desk.Dispose();
        Assert.Null(desk.ComputingSince);
        Assert.Null(desk.Plan);
    }
}
