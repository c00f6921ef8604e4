using System.Globalization;
using System.Text.RegularExpressions;
using Cavaxis.Bedside.DeIdentification;

namespace Cavaxis.Web.Pages.Share;

/// <summary>What was taken out for one reason in one kind of place; a long course has thousands of such places.</summary>
/// <param name="Why">The reason.</param>
/// <param name="Field">The place within an entry.</param>
/// <param name="Count">How often.</param>
/// <param name="Entries">Numbers of the entries, as text; the first ones where there are many.</param>
internal sealed partial record TakenOutGroup(string Why, string Field, int Count, string Entries)
{
    private const int MostNamed = 12;

    /// <summary>Groups them: the commonest reason first.</summary>
    public static IReadOnlyList<TakenOutGroup> Of(IEnumerable<TakenOut> all) =>
    [
        .. all.Select(static t => (t.Why, Match: Place().Match(t.Place), t.Place))
            .GroupBy(static t => (t.Why, Field: t.Match.Success ? Item().Replace(t.Match.Groups["field"].Value, "/…") : t.Place))
            .Select(static g => new TakenOutGroup(g.Key.Why, g.Key.Field.Trim('/'), g.Count(), Named([.. g.Where(static t => t.Match.Success).Select(static t => t.Match.Groups["entry"].Value).Distinct()])))
            .OrderByDescending(static g => g.Count).ThenBy(static g => g.Field, StringComparer.Ordinal),
    ];

    private static string Named(string[] entries) => string.Join(", ", entries.Take(MostNamed))
        + (entries.Length > MostNamed ? string.Create(CultureInfo.InvariantCulture, $" and {entries.Length - MostNamed} more") : string.Empty);

    [GeneratedRegex(@"\Aentry (?<entry>\d+)(?<field>/.*)?\z", RegexOptions.CultureInvariant)]
    private static partial Regex Place();

    [GeneratedRegex(@"/\d+(?=/|\z)", RegexOptions.CultureInvariant)]
    private static partial Regex Item();
}
