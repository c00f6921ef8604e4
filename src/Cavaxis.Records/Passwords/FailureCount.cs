namespace Cavaxis.Records.Passwords;

/// <summary>Failures to sign in under one name.</summary>
/// <param name="Count">How many in the window.</param>
/// <param name="First">The first of them.</param>
/// <param name="LockedUntil">Until when the name is locked; null where it is not.</param>
public sealed record FailureCount(int Count, DateTimeOffset First, DateTimeOffset? LockedUntil)
{
    /// <summary>No failure.</summary>
    public static FailureCount None { get; } = new(0, DateTimeOffset.UnixEpoch, null);
}
