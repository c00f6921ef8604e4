namespace Cavaxis.Reports.Drawings;

/// <summary>Greedy line breaking for any measure of width.</summary>
internal static class LineBreaking
{
    private const int LongestLine = 400;

    /// <summary>Breaks a text at its spaces; a word that fits on no line is broken inside. Line feeds stay breaks.</summary>
    /// <param name="text">The words.</param>
    /// <param name="fits">Whether a line is narrow enough.</param>
    /// <returns>At least one line.</returns>
    internal static IReadOnlyList<string> Wrapped(string text, Func<string, bool> fits)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lines = new List<string>();
        foreach (string paragraph in text.ReplaceLineEndings("\n").Split('\n'))
        {
            string line = string.Empty;
            foreach (string word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                string longer = line.Length == 0 ? word : line + " " + word;
                if (fits(longer))
                {
                    line = longer;
                    continue;
                }

                if (line.Length > 0)
                {
                    lines.Add(line);
                }

                line = BreakInside(word, fits, lines);
            }

            lines.Add(line);
        }

        return lines;
    }

    /// <summary>Adds full lines of a word that is too long and gives back its rest.</summary>
    private static string BreakInside(string word, Func<string, bool> fits, List<string> lines)
    {
        string rest = word;
        while (rest.Length > 1 && !fits(rest))
        {
            // Bisection: the fitting length of a word of thousands of letters is found in a dozen measurements.
            int low = 1;
            int high = Math.Min(rest.Length - 1, LongestLine);
            while (low < high)
            {
                int middle = (low + high + 1) / 2;
                (low, high) = fits(rest[..middle]) ? (middle, high) : (low, middle - 1);
            }

            if (low > 1 && char.IsHighSurrogate(rest[low - 1]))
            {
                low--;
            }

            lines.Add(rest[..low]);
            rest = rest[low..];
        }

        return rest;
    }
}
