using System.Text.RegularExpressions;

namespace Cavaxis.Bedside.DeIdentification;

/// <summary>What must stand in no text that leaves: names and identifiers that are known, and whatever looks like a date, a number of a file or a way to reach someone.</summary>
public sealed partial class KnownIdentity
{
    private const int ShortestPart = 3;

    private readonly string[] words;

    /// <summary>Of names and identifiers.</summary>
    /// <param name="names">Names of people, programmes, the patient's identifier and the like; each part of a name counts.</param>
    public KnownIdentity(IEnumerable<string> names)
    {
        ArgumentNullException.ThrowIfNull(names);
        words = [.. names.SelectMany(static n => Parts().Split(n).Append(n)).Where(static p => p.Length >= ShortestPart).Distinct(StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>What of it stands in a text, in words that do not repeat it.</summary>
    /// <param name="text">The text.</param>
    /// <returns>Such as "a date"; null for nothing.</returns>
    public string? FoundIn(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Array.Exists(words, w => Regex.IsMatch(text, $@"(?<![\p{{L}}\p{{N}}]){Regex.Escape(w)}(?![\p{{L}}\p{{N}}])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)) ? "a name or identifier of the record"
            : Date().IsMatch(text) ? "a date"
            : Reach().IsMatch(text) ? "an address of mail or net"
            : LongNumber().IsMatch(text) ? "a long number"
            : null;
    }

    [GeneratedRegex(@"[^\p{L}\p{N}]+")]
    private static partial Regex Parts();

    [GeneratedRegex(@"\b(\d{4}-\d{1,2}(-\d{1,2})?|\d{1,2}[./-]\d{1,2}[./-](\d{4}|\d{2})|(19|20)\d{2}|\d{1,2}\.\d{1,2}\.|\d{1,2}\.?\s+(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\p{L}*|(jan(uary)?|feb(ruary)?|march|april|june|july|august|sept?(ember)?|oct(ober)?|nov(ember)?|dec(ember)?)\s+\d{1,2})(?!\p{N})", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Date();

    [GeneratedRegex(@"@|\bwww\.|://", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Reach();

    [GeneratedRegex(@"\d([ /-]?\d){5,}", RegexOptions.CultureInvariant)]
    private static partial Regex LongNumber();
}
