using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Rapid;

/// <summary>An answer that a situation gives by itself.</summary>
public sealed record ImpliedAnswer
{
    /// <summary>Name of the question.</summary>
    [Meaning("Name of the question.")]
    [Text(60)]
    public required string Question { get; init; }

    /// <summary>The answer as it would be typed.</summary>
    [Meaning("The answer as it would be typed.")]
    [Text(60)]
    public required string Answer { get; init; }
}
