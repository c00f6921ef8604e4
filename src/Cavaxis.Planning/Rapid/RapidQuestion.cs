using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Rapid;

/// <summary>Something to be answered about the patient.</summary>
public sealed record RapidQuestion
{
    /// <summary>Name by which it is answered.</summary>
    [Meaning("Name by which the question is answered.")]
    [Text(60)]
    public required string Name { get; init; }

    /// <summary>What is asked.</summary>
    [Meaning("What is asked, in words.")]
    [Text(200)]
    public required string Asks { get; init; }

    /// <summary>What it is answered with.</summary>
    [Meaning("What the question is answered with.")]
    public required QuestionKind Kind { get; init; }

    /// <summary>Unit of a number.</summary>
    [Meaning("Unit of a number.")]
    [Text(30)]
    public string? Unit { get; init; }

    /// <summary>Lowest number taken.</summary>
    [Meaning("Lowest number taken.")]
    [Number(-1000, 10000, "1")]
    public double? Low { get; init; }

    /// <summary>Highest number taken.</summary>
    [Meaning("Highest number taken.")]
    [Number(-1000, 10000, "1")]
    public double? High { get; init; }

    /// <summary>Words taken.</summary>
    [Meaning("Words taken as an answer.")]
    [Text(20)]
    public IReadOnlyList<string> Words { get; init; } = [];
}
