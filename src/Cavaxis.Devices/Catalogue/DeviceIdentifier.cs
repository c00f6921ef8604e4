namespace Cavaxis.Devices.Catalogue;

/// <summary>The form of a device's identifier: it goes into file names, command lines and links.</summary>
internal static class DeviceIdentifier
{
    /// <summary>Longest identifier.</summary>
    internal const int Longest = 60;

    /// <summary>What is accepted, in words.</summary>
    internal const string Accepted = "small letters a-z, digits, dots and hyphens, beginning with a letter";

    /// <summary>Whether a text can be an identifier.</summary>
    internal static bool IsValid(string text) =>
        text.Length is > 0 and <= Longest && char.IsAsciiLetterLower(text[0])
        && text.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c is '-' or '.');
}
