namespace Cavaxis.Records.SignIn;

/// <summary>What became of a sign-in: <see cref="SignedIn"/> or <see cref="SignInRefused"/>.</summary>
public abstract record SignInOutcome
{
    private protected SignInOutcome()
    {
    }
}
