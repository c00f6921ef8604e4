using Cavaxis.Quantities.Faults;

namespace Cavaxis.Records.Passwords;

/// <summary>What a password must be. Length counts and nothing else does: no forced digits, no forced change (common practice, no source).</summary>
public static class PasswordRule
{
    /// <summary>Fewest characters.</summary>
    public const int Fewest = 12;

    /// <summary>Most characters.</summary>
    public const int Most = 256;

    /// <summary>A shorter name stands in words by chance: "eve" in "seven".</summary>
    private const int ShortestName = 4;

    /// <summary>Checks a new password. The fault never repeats it.</summary>
    /// <param name="password">The password.</param>
    /// <param name="signInName">The name to sign in with, which may not stand in it.</param>
    /// <exception cref="InputFaultException">Too short, too long, one letter over and over, or holds the name.</exception>
    public static void Require(string password, string signInName)
    {
        ArgumentNullException.ThrowIfNull(password);
        ArgumentNullException.ThrowIfNull(signInName);
        string? fault = password.Length < Fewest ? "too short"
            : password.Length > Most ? "too long"
            : password.Distinct().Count() < 5 ? "the same few characters over and over"
            : signInName.Length >= ShortestName && password.Contains(signInName, StringComparison.OrdinalIgnoreCase) ? "one that holds the sign-in name"
            : null;
        if (fault is not null)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.WrongLength, "password", fault, "12 to 256 characters, at least 5 different, without the sign-in name", "Take four or five words that do not belong together."));
        }
    }
}
