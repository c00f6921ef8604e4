using Cavaxis.Planning.Case;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rules;

/// <summary>
/// Every rule, limit and criterion that planning uses, as data with rationale and source. A programme may hand in its own;
/// what is looser than the built-in book is listed on every plan with who changed it and why.
/// </summary>
[Meaning("Every rule, limit and criterion that planning uses, as data with rationale and source.")]
public sealed record RuleBook
{
    /// <summary>Version of the format.</summary>
    [Meaning("Version of the rule book format.")]
    [Number(1, 1, "1")]
    public required int CavaxisRuleBook { get; init; }

    /// <summary>Edition of the content.</summary>
    [Meaning("Edition of the content.")]
    [Text(60)]
    public required string Edition { get; init; }

    /// <summary>Who changed it.</summary>
    [Meaning("Who changed the rule book; needed where a rule is looser than the built-in one.")]
    [Text(120)]
    public string? ChangedBy { get; init; }

    /// <summary>Why it was changed.</summary>
    [Meaning("Why the rule book was changed; needed where a rule is looser than the built-in one.")]
    [Text(600)]
    public string? ChangeReason { get; init; }

    /// <summary>Limits and targets.</summary>
    [Meaning("Limits and targets.")]
    [Text(60)]
    public required IReadOnlyList<LimitRule> Limits { get; init; }

    /// <summary>Zones of ports.</summary>
    [Meaning("Zones of ports.")]
    [Text(100)]
    public required IReadOnlyList<ZoneRule> Zones { get; init; }

    /// <summary>Findings from facts of the case.</summary>
    [Meaning("Findings from facts of the case.")]
    [Text(200)]
    public required IReadOnlyList<FindingRule> Findings { get; init; }

    /// <summary>Ranking criteria.</summary>
    [Meaning("Ranking criteria with their scales and weights.")]
    [Text(40)]
    public required IReadOnlyList<CriterionRule> Criteria { get; init; }

    /// <summary>The value of a limit.</summary>
    /// <param name="name">Which limit.</param>
    /// <returns>Its value in the unit of its name.</returns>
    /// <exception cref="KeyNotFoundException">The book lacks the limit; a book that was read by <c>RuleBookReader</c> never does.</exception>
    public double this[LimitName name] => Limit(name).Value;

    /// <summary>Where a limit comes from.</summary>
    /// <param name="name">Which limit.</param>
    /// <returns>Its source.</returns>
    /// <exception cref="KeyNotFoundException">The book lacks the limit.</exception>
    public Source SourceOf(LimitName name) => Limit(name).ToSource();

    // By index: an enumerator would be a heap object for every look-up, and the search looks up for each combination.
    private LimitRule Limit(LimitName name)
    {
        for (int i = 0; i < Limits.Count; i++)
        {
            if (Limits[i].Name == name)
            {
                return Limits[i];
            }
        }

        throw new KeyNotFoundException($"The rule book has no limit named {name}.");
    }
}
