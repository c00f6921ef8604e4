using Cavaxis.Records.Passwords;

namespace Cavaxis.Records.Tests.SignIn;

/// <summary>The cheapest Argon2id, and how often it was asked.</summary>
public sealed class CountingHasher(IPasswordHasher inner) : IPasswordHasher
{
    private int checks;

    public int Checks => checks;

    public string NoOnes => inner.NoOnes;

    public string Hash(string password) => inner.Hash(password);

    public bool Matches(string password, string hash)
    {
        Interlocked.Increment(ref checks);
        return inner.Matches(password, hash);
    }

    public bool IsOutdated(string hash) => inner.IsOutdated(hash);
}
