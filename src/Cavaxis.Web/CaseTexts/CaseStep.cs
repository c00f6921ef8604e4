namespace Cavaxis.Web.CaseTexts;

/// <summary>One step of a path into a case.</summary>
/// <param name="Name">Name of a field.</param>
/// <param name="Keys">Where the field is a list: words that pick one entry; empty otherwise.</param>
internal sealed record CaseStep(string Name, IReadOnlyList<KeyValuePair<string, string>> Keys)
{
    /// <summary>
    /// The steps of a path such as <c>blood.arterialPh</c> or <c>vessels[vessel=internalJugularVein,side=right].depthMm</c>.
    /// Entries are named by their words, because their place changes when another window adds one.
    /// </summary>
    /// <param name="path">The path.</param>
    /// <returns>Its steps.</returns>
    /// <exception cref="FormatException">The path is none.</exception>
    public static IReadOnlyList<CaseStep> Of(string path) => [.. path.Split('.').Select(One)];

    private static CaseStep One(string part)
    {
        int open = part.IndexOf('[', StringComparison.Ordinal);
        if (open < 0)
        {
            return part.Length > 0 ? new CaseStep(part, []) : throw new FormatException("A step of a path needs a name.");
        }

        if (open == 0 || part[^1] != ']')
        {
            throw new FormatException($"'{part}' is no step of a path.");
        }

        return new CaseStep(part[..open], [.. part[(open + 1)..^1].Split(',').Select(static pair =>
        {
            string[] sides = pair.Split('=');
            return sides.Length == 2 ? KeyValuePair.Create(sides[0], sides[1]) : throw new FormatException($"'{pair}' is no key of an entry.");
        })]);
    }
}
