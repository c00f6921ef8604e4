using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Rapid;

/// <summary>A limit that an answer is held against.</summary>
public sealed record AnswerCondition
{
    /// <summary>Name of the question.</summary>
    [Meaning("Name of the question whose answer is judged.")]
    [Text(60)]
    public required string Question { get; init; }

    /// <summary>How.</summary>
    [Meaning("How the answer is held against the limit.")]
    public required AnswerComparison Comparison { get; init; }

    /// <summary>The limit, or the lower of two.</summary>
    [Meaning("The limit in the question's unit, or the lower of two.")]
    [Number(-1000, 10000, "1")]
    public double? Value { get; init; }

    /// <summary>The upper of two limits.</summary>
    [Meaning("The upper of two limits.")]
    [Number(-1000, 10000, "1")]
    public double? Upper { get; init; }

    /// <summary>Words that meet it.</summary>
    [Meaning("Words that meet the condition.")]
    [Text(20)]
    public IReadOnlyList<string> Words { get; init; } = [];
}
