using Cavaxis.Web.Desk;

namespace Cavaxis.Web.Tests.Desk;

/// <summary>Work is shared between windows and stopped when the last has gone.</summary>
public class SharedWorkTests
{
    private int runs;

    [Fact]
    public async Task Two_windows_that_want_the_same_have_it_computed_once()
    {
        using SharedWork<int> work = new(4);
        using ManualResetEventSlim go = new();
        Task<int> one = work.GetAsync("a", _ => Run(go), CancellationToken.None);
        Task<int> two = work.GetAsync("a", _ => Run(go), CancellationToken.None);
        go.Set();

        Assert.Equal((7, 7), (await one, await two));
        Assert.Equal(7, await work.GetAsync("a", _ => Run(go), CancellationToken.None));
        Assert.Equal(1, runs);
    }

    [Fact]
    public async Task A_window_that_goes_away_does_not_stop_the_work_of_another()
    {
        using SharedWork<int> work = new(4);
        using ManualResetEventSlim go = new();
        using CancellationTokenSource gone = new();
        bool stopped = false;
        Task<int> one = work.GetAsync("a", stop => { stop.Register(() => stopped = true); return Run(go); }, gone.Token);
        Task<int> two = work.GetAsync("a", _ => Run(go), CancellationToken.None);
        await gone.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => one);
        go.Set();

        Assert.Equal(7, await two);
        Assert.False(stopped);
        Assert.Equal(1, runs);
    }

    [Fact]
    public async Task Work_that_nobody_waits_for_is_stopped_and_can_be_asked_for_again()
    {
        using SharedWork<int> work = new(4);
        using CancellationTokenSource gone = new();
        TaskCompletionSource stopped = new();
        Task<int> one = work.GetAsync("a", stop => { stop.WaitHandle.WaitOne(); stopped.SetResult(); stop.ThrowIfCancellationRequested(); return 1; }, gone.Token);
        await gone.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => one);
        await stopped.Task;
        Assert.Equal(2, await work.GetAsync("a", static _ => 2, CancellationToken.None));
    }

    [Fact]
    public async Task A_failure_is_told_and_not_kept()
    {
        using SharedWork<int> work = new(4);
        await Assert.ThrowsAsync<InvalidOperationException>(() => work.GetAsync("a", static _ => throw new InvalidOperationException("no"), CancellationToken.None));

        Assert.Equal(3, await work.GetAsync("a", static _ => 3, CancellationToken.None));
    }

    [Fact]
    public async Task Work_that_was_busy_when_its_turn_to_be_dropped_came_is_dropped_later()
    {
        using SharedWork<int> work = new(2);
        using ManualResetEventSlim go = new();
        Task<int> slow = work.GetAsync("slow", _ => Run(go), CancellationToken.None);
        for (int i = 0; i < 5; i++)
        {
            await work.GetAsync($"quick{i}", static _ => 1, CancellationToken.None);
        }

        Assert.Equal(2, work.Count);
        go.Set();
        Assert.Equal(7, await slow);
        for (int i = 5; i < 10; i++)
        {
            await work.GetAsync($"quick{i}", static _ => 1, CancellationToken.None);
        }

        Assert.Equal(2, work.Count);
        Assert.Equal(8, await work.GetAsync("slow", static _ => 8, CancellationToken.None));
    }

    private int Run(ManualResetEventSlim go)
    {
        go.Wait();
        Interlocked.Increment(ref runs);
        return 7;
    }
}
