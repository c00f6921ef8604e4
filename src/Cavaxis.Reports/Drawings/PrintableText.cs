using System.Globalization;
using System.Text;

namespace Cavaxis.Reports.Drawings;

/// <summary>
/// Text from outside made fit for a document: no control characters (not allowed in XML), no half surrogates, and none
/// of the invisible marks that turn the reading direction and so can make a number read otherwise than it is stored.
/// </summary>
internal static class PrintableText
{
    /// <summary>The text without what cannot or must not be printed; line feeds and tabs become spaces.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>Printable text on one line.</returns>
    internal static string OneLine(string text) => Cleaned(text, keepLineFeeds: false);

    /// <summary>The text without what cannot or must not be printed; line feeds stay.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>Printable text.</returns>
    internal static string Of(string text) => Cleaned(text, keepLineFeeds: true);

    private static string Cleaned(string text, bool keepLineFeeds)
    {
        ArgumentNullException.ThrowIfNull(text);
        var kept = new StringBuilder(text.Length);
        foreach (Rune rune in text.ReplaceLineEndings("\n").EnumerateRunes())
        {
            if (rune.Value == '\n' && keepLineFeeds)
            {
                kept.Append('\n');
            }
            else if (rune.Value is '\n' or '\t')
            {
                kept.Append(' ');
            }
            else if (IsPrintable(rune))
            {
                kept.Append(rune.ToString());
            }
        }

        return kept.ToString();
    }

    private static bool IsPrintable(Rune rune) =>
        Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Format
            or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.OtherNotAssigned)
        && (rune.Value & 0xFFFE) != 0xFFFE;
}
