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
            int distance = Distance(given.ToUpperInvariant(), word.ToUpperInvariant());
            if (distance < least)
            {
                (best, least) = (word, distance);
            }
        }

        return best is not null && least <= Math.Max(2, best.Length / 3) && least < Math.Max(given.Length, best.Length) ? best : null;
    }

    // Levenshtein 1966: fewest insertions, deletions and replacements.
    private static int Distance(string a, string b)
    {
        int[] above = new int[b.Length + 1];
        int[] row = new int[b.Length + 1];
        for (int j = 0; j <= b.Length; j++)
        {
            above[j] = j;
        }

        for (int i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int replace = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(replace, Math.Min(above[j], row[j - 1]) + 1);
            }

            (above, row) = (row, above);
        }

        return above[b.Length];
    }
}
