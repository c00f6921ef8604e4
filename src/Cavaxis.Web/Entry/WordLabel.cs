using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Web.Entry;

/// <summary>Words of the case format as people say them.</summary>
public static class WordLabel
{
    private static readonly HashSet<string> Abbreviations = ["ct", "mri"];

    private static readonly Dictionary<string, string> Supports = new() { ["vv"] = "V-V", ["va"] = "V-A", ["vav"] = "V-AV" };

    /// <summary>Such as "on hand" for <c>onHand</c> and "not known" for <c>unknown</c>.</summary>
    /// <param name="word">A word of the case format.</param>
    /// <returns>Words.</returns>
    public static string Of(string word)
    {
        ArgumentException.ThrowIfNullOrEmpty(word);
        return word switch
        {
            JsonName.Unknown => "not known",
            _ when Abbreviations.Contains(word) => word.ToUpperInvariant(),
            _ => Support(PlainWords.FromName(char.ToUpperInvariant(word[0]) + word[1..])),
        };
    }

    /// <summary>Words with a capital letter at their start.</summary>
    internal static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string Support(string words)
    {
        string[] parts = words.Split(' ', 2);
        return Supports.TryGetValue(parts[0], out string? way) ? string.Join(' ', parts.Skip(1).Prepend(way)) : words;
    }
}
