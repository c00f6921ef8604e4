using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Web.Entry;

/// <summary>Words of the case format as people say them.</summary>
public static class WordLabel
{
    private static readonly HashSet<string> Abbreviations = ["ct", "mri"];

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
            _ => PlainWords.FromName(char.ToUpperInvariant(word[0]) + word[1..]),
        };
    }
}
