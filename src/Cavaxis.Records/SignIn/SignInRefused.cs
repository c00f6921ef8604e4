namespace Cavaxis.Records.SignIn;

/// <summary>Name and password do not belong together, or the name is locked. Says nothing of whether someone has that name.</summary>
/// <param name="LockedUntil">Until when the name is locked; null where it is not.</param>
public sealed record SignInRefused(DateTimeOffset? LockedUntil) : SignInOutcome;
