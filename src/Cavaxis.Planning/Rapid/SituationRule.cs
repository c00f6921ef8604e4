using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;

namespace Cavaxis.Planning.Rapid;

/// <summary>What a situation means for the plan, and what is to be borne in mind in it.</summary>
public sealed record SituationRule
{
    /// <summary>Which.</summary>
    [Meaning("Which situation.")]
    public required RapidSituation Situation { get; init; }

    /// <summary>In words.</summary>
    [Meaning("The situation in words.")]
    [Text(60)]
    public required string Title { get; init; }

    /// <summary>What support is for; nothing where another situation says it.</summary>
    [Meaning("What support is for; left out where another situation says it.")]
    public SupportGoal? Goal { get; init; }

    /// <summary>Configurations that are planned in it.</summary>
    [Meaning("Configurations that are planned in it; empty where another situation says it.")]
    [Text(10)]
    public required IReadOnlyList<ConfigurationKind> Configurations { get; init; }

    /// <summary>Answers it gives.</summary>
    [Meaning("Answers that the situation gives by itself.")]
    [Text(10)]
    public IReadOnlyList<ImpliedAnswer> Implies { get; init; } = [];

    /// <summary>What to bear in mind.</summary>
    [Meaning("What is to be borne in mind.")]
    [Text(30)]
    public required IReadOnlyList<SituationFinding> Findings { get; init; }
}
