using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Rapid;

/// <summary>Published rows that do not agree, and how. Told where two of them are shown.</summary>
public sealed record CohortConflict
{
    /// <summary>The rows.</summary>
    [Meaning("Names of the rows that do not agree.")]
    [Text(20)]
    public required IReadOnlyList<string> Cohorts { get; init; }

    /// <summary>How they disagree.</summary>
    [Meaning("How they disagree.")]
    [Text(400)]
    public required string Says { get; init; }
}
