using Cavaxis.Planning.Case;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rules;

/// <summary>A number that planning holds results against, with its rationale and source.</summary>
public sealed record LimitRule
{
    /// <summary>Which number.</summary>
    [Meaning("Which number.")]
    public required LimitName Name { get; init; }

    /// <summary>Its value in the unit of its name.</summary>
    [Meaning("The value, in the unit of the name.")]
    [Number(-500, 1000, "as named")]
    public required double Value { get; init; }

    /// <summary>Which direction makes it stricter.</summary>
    [Meaning("Whether a higher or a lower value is stricter; neither where the number is a target.")]
    public required StricterDirection Stricter { get; init; }

    /// <summary>Why the limit exists.</summary>
    [Meaning("Why the limit exists.")]
    [Text(600)]
    public required string Rationale { get; init; }

    /// <summary>Where it comes from.</summary>
    [Meaning("Where the limit comes from.")]
    [Text(300)]
    public required string Citation { get; init; }

    /// <summary>How sure its source is.</summary>
    [Meaning("How far the source was opened.")]
    public required Certainty Certainty { get; init; }

    /// <summary>Citation and certainty as one source.</summary>
    /// <returns>The source.</returns>
    public Source ToSource() => new(Citation, Certainty);
}
