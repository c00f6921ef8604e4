namespace Cavaxis.Records.Passwords;

/// <summary>After how many failures a name is locked, and for how long.</summary>
/// <param name="Failures">Failures within the window that lock.</param>
/// <param name="Window">Failures longer ago than this do not count.</param>
/// <param name="Duration">How long the lock holds.</param>
public sealed record LockOut(int Failures, TimeSpan Window, TimeSpan Duration)
{
    /// <summary>Five failures in 15 minutes lock for 15 minutes (common practice, no source).</summary>
    public static LockOut Usual { get; } = new(5, TimeSpan.FromMinutes(15), TimeSpan.FromMinutes(15));

    /// <summary>True where a name is locked.</summary>
    /// <param name="state">Its failures.</param>
    /// <param name="now">The moment.</param>
    /// <returns>Whether it is.</returns>
    public static bool IsLocked(FailureCount state, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.LockedUntil > now;
    }

    /// <summary>The failures after one more.</summary>
    /// <param name="state">Before.</param>
    /// <param name="now">The moment of the failure.</param>
    /// <returns>After. While the lock holds nothing is counted: it does not grow longer by trying.</returns>
    public FailureCount AfterFailure(FailureCount state, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (IsLocked(state, now))
        {
            return state;
        }

        bool within = state.Count > 0 && state.LockedUntil is null && now - state.First <= Window;
        FailureCount next = within ? state with { Count = state.Count + 1 } : new FailureCount(1, now, null);
        return next.Count >= Failures ? next with { LockedUntil = now + Duration } : next;
    }
}
