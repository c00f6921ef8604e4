using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Sealing;

/// <summary>
/// What a passphrase of a pack must be. Whoever has the file can guess as long as they like, so it is longer than a password; and it is read out over the telephone and
/// typed on another keyboard, so it is of plain letters, and blanks at its ends do not count.
/// </summary>
public static class PassphraseRule
{
    /// <summary>Fewest characters.</summary>
    public const int Fewest = 16;

    /// <summary>Most characters.</summary>
    public const int Most = 256;

    private const int FewestDifferent = 6;

    /// <summary>Checks a new passphrase. The fault never repeats it.</summary>
    /// <param name="passphrase">As typed.</param>
    /// <returns>The passphrase without blanks at its ends.</returns>
    /// <exception cref="InputFaultException">Too short, too long, of few characters, or of characters that not every keyboard has.</exception>
    public static string Require(string passphrase)
    {
        ArgumentNullException.ThrowIfNull(passphrase);
        string trimmed = passphrase.Trim(' ');
        string? fault = trimmed.Length < Fewest ? "too short"
            : trimmed.Length > Most ? "too long"
            : trimmed.Any(static c => c is < ' ' or > '~') ? "one with characters that not every keyboard has"
            : trimmed.Distinct().Count() < FewestDifferent ? "the same few characters over and over"
            : null;
        return fault is null ? trimmed : throw new InputFaultException(new InputFault(
            FaultCode.WrongLength, "passphrase", fault, "16 to 256 plain characters (letters without accents, digits, blanks, signs), at least 6 different",
            "Take five or six words that do not belong together, and tell them over the telephone, not beside the file."));
    }
}
