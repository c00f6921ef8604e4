namespace Cavaxis.Records.SignIn;

/// <summary>How long someone stays signed in.</summary>
/// <param name="Idle">Without being seen.</param>
/// <param name="Longest">At most.</param>
public sealed record SessionRule(TimeSpan Idle, TimeSpan Longest)
{
    /// <summary>Half an hour unseen, at most a shift of 12 hours and a quarter for the handover (assumption of this project).</summary>
    public static SessionRule Usual { get; } = new(TimeSpan.FromMinutes(30), TimeSpan.FromMinutes((12 * 60) + 15));

    /// <summary>True where a session still holds.</summary>
    /// <param name="begun">Signed in at.</param>
    /// <param name="seen">Last seen at.</param>
    /// <param name="now">The moment.</param>
    /// <returns>Whether it holds. A clock that was put back ends it.</returns>
    public bool Holds(DateTimeOffset begun, DateTimeOffset seen, DateTimeOffset now) =>
        now >= begun && now - begun < Longest && now - seen < Idle;
}
