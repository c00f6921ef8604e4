using Cavaxis.Records.Passwords;
using Cavaxis.Records.SignIn;

namespace Cavaxis.Records.Tests.Passwords;

public class LockOutTests
{
    private static readonly DateTimeOffset Start = new(2031, 2, 3, 4, 5, 6, TimeSpan.Zero);
    private static readonly LockOut Rule = new(3, TimeSpan.FromMinutes(10), TimeSpan.FromMinutes(20));

    [Fact]
    public void The_third_failure_in_the_window_locks_for_the_duration()
    {
        FailureCount two = After([0, 5]);
        Assert.False(LockOut.IsLocked(two, Start.AddMinutes(6)));
        FailureCount three = Rule.AfterFailure(two, Start.AddMinutes(10));
        Assert.Equal(Start.AddMinutes(30), three.LockedUntil);
        Assert.True(LockOut.IsLocked(three, Start.AddMinutes(29.9)));
        Assert.False(LockOut.IsLocked(three, Start.AddMinutes(30)));
    }

    [Fact]
    public void Failures_further_apart_than_the_window_do_not_add_up() => Assert.Null(After([0, 6, 12, 24]).LockedUntil);

    [Fact]
    public void Trying_while_locked_makes_the_lock_no_longer()
    {
        FailureCount locked = After([0, 1, 2]);
        Assert.Equal(locked, Rule.AfterFailure(locked, Start.AddMinutes(10)));
        Assert.Equal((1, null), (After([0, 1, 2, 25]).Count, After([0, 1, 2, 25]).LockedUntil));
    }

    [Theory]
    [InlineData(0, 0, true)]
    [InlineData(29, 29.9, true)]
    [InlineData(0, 30, false)]
    [InlineData(735, 734, true)]
    [InlineData(736, 735, false)]
    [InlineData(0, -1, false)]
    public void A_session_ends_unseen_after_half_an_hour_and_in_any_case_after_a_shift(double seen, double now, bool holds) =>
        Assert.Equal(holds, SessionRule.Usual.Holds(Start, Start.AddMinutes(Math.Min(seen, now)), Start.AddMinutes(now)));

    private static FailureCount After(double[] minutes) => minutes.Aggregate(FailureCount.None, static (state, at) => Rule.AfterFailure(state, Start.AddMinutes(at)));
}
