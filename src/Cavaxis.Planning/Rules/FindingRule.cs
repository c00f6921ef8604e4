using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rules;

/// <summary>What a fact of the case means for some configurations.</summary>
public sealed record FindingRule
{
    /// <summary>Stable name of the rule.</summary>
    [Meaning("Stable name of the rule.")]
    [Text(60)]
    public required string Id { get; init; }

    /// <summary>The fact asked for.</summary>
    [Meaning("The fact of the case asked for.")]
    public required CaseFact Fact { get; init; }

    /// <summary>The state in which the rule speaks.</summary>
    [Meaning("The state of the fact in which the rule speaks.")]
    public required FactState State { get; init; }

    /// <summary>Access routes a configuration must use for the rule to apply; empty for all.</summary>
    [Meaning("Access routes a plan must use for the rule to apply; empty for all.")]
    [Text(10)]
    public IReadOnlyList<AccessRoute> Routes { get; init; } = [];

    /// <summary>Configurations the rule applies to; empty for all.</summary>
    [Meaning("Configurations the rule applies to; empty for all.")]
    [Text(10)]
    public IReadOnlyList<ConfigurationKind> Configurations { get; init; } = [];

    /// <summary>How grave it is.</summary>
    [Meaning("How grave the finding is.")]
    public required FindingGrade Grade { get; init; }

    /// <summary>What it means.</summary>
    [Meaning("What the finding means, for the clinician.")]
    [Text(400)]
    public required string Says { get; init; }

    /// <summary>What would resolve it.</summary>
    [Meaning("What would resolve the finding.")]
    [Text(400)]
    public required string Resolve { get; init; }

    /// <summary>Why the rule exists.</summary>
    [Meaning("Why the rule exists.")]
    [Text(600)]
    public required string Rationale { get; init; }

    /// <summary>Where it comes from.</summary>
    [Meaning("Where the rule comes from.")]
    [Text(300)]
    public required string Citation { get; init; }

    /// <summary>How sure its source is.</summary>
    [Meaning("How far the source was opened.")]
    public required Certainty Certainty { get; init; }

    /// <summary>Citation and certainty as one source.</summary>
    /// <returns>The source.</returns>
    public Source ToSource() => new(Citation, Certainty);
}
