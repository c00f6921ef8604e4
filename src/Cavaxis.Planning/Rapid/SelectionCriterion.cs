using Cavaxis.Planning.Case;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rapid;

/// <summary>One criterion of one source.</summary>
public sealed record SelectionCriterion
{
    /// <summary>Stable name.</summary>
    [Meaning("Stable name of the criterion.")]
    [Text(60)]
    public required string Id { get; init; }

    /// <summary>Where it is asked.</summary>
    [Meaning("Situations in which the criterion is asked.")]
    [Text(20)]
    public required IReadOnlyList<RapidSituation> Situations { get; init; }

    /// <summary>What the source says with it.</summary>
    [Meaning("What the source says with the criterion.")]
    public required SelectionKind Kind { get; init; }

    /// <summary>What must hold; nothing where parts are counted.</summary>
    [Meaning("What must hold; left out where parts are counted.")]
    public AnswerCondition? When { get; init; }

    /// <summary>Criteria counted together.</summary>
    [Meaning("Names of earlier criteria that are counted together.")]
    [Text(10)]
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>How many of the parts must hold.</summary>
    [Meaning("How many of the parts must hold.")]
    [Number(1, 10, "1")]
    public int? Needed { get; init; }

    /// <summary>In words.</summary>
    [Meaning("The criterion in words.")]
    [Text(400)]
    public required string Wording { get; init; }

    /// <summary>How strong the source makes it.</summary>
    [Meaning("How strong the source makes it: entry of a trial, consensus, local rule.")]
    [Text(120)]
    public required string Strength { get; init; }

    /// <summary>Name of its source.</summary>
    [Meaning("Name of the source.")]
    [Text(60)]
    public required string Source { get; init; }

    /// <summary>How far the source was opened for it.</summary>
    [Meaning("How far the source was opened.")]
    public required Certainty Certainty { get; init; }

    /// <summary>What else to know.</summary>
    [Meaning("What else to know of it.")]
    [Text(400)]
    public string? Note { get; init; }
}
