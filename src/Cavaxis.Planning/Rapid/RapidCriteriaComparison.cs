namespace Cavaxis.Planning.Rapid;

/// <summary>Says where a file of criteria differs from the built-in one. Nothing is refused for it; it is written on every result.</summary>
public static class RapidCriteriaComparison
{
    /// <summary>The changes.</summary>
    /// <param name="criteria">The file in use.</param>
    /// <returns>One sentence for each; empty for the built-in file.</returns>
    public static IReadOnlyList<string> Changes(RapidCriteria criteria)
    {
        ArgumentNullException.ThrowIfNull(criteria);
        RapidCriteria own = RapidCriteriaReader.BuiltIn;
        return ReferenceEquals(own, criteria)
            ? []
            : [
                .. Differences("criterion", own.Criteria.ToDictionary(static c => c.Id, Told, StringComparer.Ordinal), criteria.Criteria.ToDictionary(static c => c.Id, Told, StringComparer.Ordinal)),
                .. Differences("cohort", own.Cohorts.ToDictionary(static c => c.Id, Told, StringComparer.Ordinal), criteria.Cohorts.ToDictionary(static c => c.Id, Told, StringComparer.Ordinal)),
                .. Differences("situation", own.Situations.ToDictionary(static s => s.Situation.ToString(), Told, StringComparer.Ordinal), criteria.Situations.ToDictionary(static s => s.Situation.ToString(), Told, StringComparer.Ordinal)),
            ];
    }

    private static IEnumerable<string> Differences(string what, Dictionary<string, string> own, Dictionary<string, string> used) =>
    [
        .. own.Keys.Where(id => !used.ContainsKey(id)).Select(id => $"{what} {id} is left out"),
        .. own.Where(pair => used.TryGetValue(pair.Key, out string? other) && other != pair.Value).Select(pair => $"{what} {pair.Key} is changed"),
        .. used.Keys.Where(id => !own.ContainsKey(id)).Select(id => $"{what} {id} is added"),
    ];

    // Records hold lists, which compare by reference; as text they compare by content.
    private static string Told(SelectionCriterion c) =>
        string.Join('|', c.Kind, string.Join(',', c.Situations), Told(c.When), string.Join(',', c.Parts), FormattableString.Invariant($"{c.Needed}"), c.Wording, c.Strength, c.Source, c.Certainty);

    private static string Told(PublishedCohort c) => string.Join(
        '|', string.Join(',', c.Situations), c.Ages, Told(c.When), c.Profile, c.Outcome, FormattableString.Invariant($"{c.Count} {c.Of} {c.SharePercent} {c.PrintedLowPercent} {c.PrintedHighPercent}"), c.Source, c.Certainty);

    private static string Told(SituationRule s) => string.Join('|', s.Goal, string.Join(',', s.Configurations), string.Join(',', s.Findings.Select(static f => $"{f.Id} {f.Says} {f.Resolve} {f.Source}")));

    private static string Told(AnswerCondition? when) => when is null
        ? string.Empty
        : FormattableString.Invariant($"{when.Question} {when.Comparison} {when.Value} {when.Upper} {string.Join(',', when.Words)}");
}
