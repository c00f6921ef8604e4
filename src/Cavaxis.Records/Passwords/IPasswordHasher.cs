namespace Cavaxis.Records.Passwords;

/// <summary>Makes and checks password hashes.</summary>
public interface IPasswordHasher
{
    /// <summary>A hash that no password gives, for names that are not known: checking it takes as long as any other.</summary>
    string NoOnes { get; }

    /// <summary>Hashes a password with new salt.</summary>
    /// <param name="password">The password.</param>
    /// <returns>The hash with its salt and cost as one text.</returns>
    string Hash(string password);

    /// <summary>Checks a password.</summary>
    /// <param name="password">The password given.</param>
    /// <param name="hash">A text that <see cref="Hash"/> made.</param>
    /// <returns>True where they belong together; false too where the text is no such hash.</returns>
    bool Matches(string password, string hash);

    /// <summary>True where a hash was made at another cost than new ones are.</summary>
    /// <param name="hash">The hash.</param>
    /// <returns>Whether it should be made anew at the next sign-in.</returns>
    bool IsOutdated(string hash);
}
