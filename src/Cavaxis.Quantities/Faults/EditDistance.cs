namespace Cavaxis.Quantities.Faults;

/// <summary>How far two words are apart, for naming the word that a person may have meant.</summary>
public static class EditDistance
{
    /// <summary>Fewest insertions, deletions and replacements that turn one word into the other (Levenshtein 1966).</summary>
    /// <param name="a">One word.</param>
    /// <param name="b">The other.</param>
    /// <returns>Their number; upper and lower case differ.</returns>
    public static int Between(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
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
