using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Json;

/// <summary>Finds the word a person most likely meant.</summary>
internal static class ClosestWord
{
    private const int LongestCompared = 60;

    /// <summary>The known word nearest to the one given, or null where none is near.</summary>
    /// <param name="given">The word written.</param>
    /// <param name="known">Words that are accepted.</param>
    public static string? To(string given, IEnumerable<string> known)
    {
        if (given.Length is 0 or > LongestCompared)
        {
            return null;
        }

        string? best = null;
        int least = int.MaxValue;
        foreach (string word in known)
        {
            int distance = EditDistance.Between(given.ToUpperInvariant(), word.ToUpperInvariant());
            if (distance < least)
            {
                (best, least) = (word, distance);
            }
        }

        return best is not null && least <= Math.Max(2, best.Length / 3) && least < Math.Max(given.Length, best.Length) ? best : null;
    }
}
