using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Rules;

/// <summary>How one criterion turns into points: a straight line from worst (0) to best (1), and a visible weight.</summary>
public sealed record CriterionRule
{
    /// <summary>Which criterion.</summary>
    [Meaning("Which criterion.")]
    public required CriterionName Name { get; init; }

    /// <summary>Value worth no point.</summary>
    [Meaning("Value worth no point.")]
    [Number(-1000, 1000, "as named")]
    public required double Worst { get; init; }

    /// <summary>Value worth one point.</summary>
    [Meaning("Value worth one point.")]
    [Number(-1000, 1000, "as named")]
    public required double Best { get; init; }

    /// <summary>Weight when the goal is gas exchange.</summary>
    [Meaning("Weight when the goal is gas exchange.")]
    [Number(0, 100, "1")]
    public required double GasExchangeWeight { get; init; }

    /// <summary>Weight when the goal is circulation, both, or arrest.</summary>
    [Meaning("Weight when the goal is circulation, both, or arrest.")]
    [Number(0, 100, "1")]
    public required double CirculationWeight { get; init; }

    /// <summary>Why the scale and weights are what they are.</summary>
    [Meaning("Why the scale and the weights are what they are.")]
    [Text(400)]
    public required string Rationale { get; init; }
}
