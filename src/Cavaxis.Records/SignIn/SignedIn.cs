using Cavaxis.Records.Access;

namespace Cavaxis.Records.SignIn;

/// <summary>The person is signed in.</summary>
/// <param name="Person">Who.</param>
/// <param name="Token">What proves it from now on; kept nowhere but with the person. Its text never appears in <see cref="ToString"/>.</param>
/// <param name="EndsAt">When it ends at the latest.</param>
public sealed record SignedIn(Person Person, string Token, DateTimeOffset EndsAt) : SignInOutcome
{
    /// <inheritdoc/>
    public override string ToString() => $"{Person.Id} is signed in";
}
