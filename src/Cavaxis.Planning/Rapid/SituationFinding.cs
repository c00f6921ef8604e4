using Cavaxis.Planning.Case;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rapid;

/// <summary>Something to bear in mind in one situation.</summary>
public sealed record SituationFinding
{
    /// <summary>Stable name within the situation.</summary>
    [Meaning("Stable name of the finding within its situation.")]
    [Text(60)]
    public required string Id { get; init; }

    /// <summary>What is so.</summary>
    [Meaning("What is so, for the clinician.")]
    [Text(400)]
    public required string Says { get; init; }

    /// <summary>What to do about it.</summary>
    [Meaning("What answers it.")]
    [Text(400)]
    public required string Resolve { get; init; }

    /// <summary>Name of its source.</summary>
    [Meaning("Name of the source.")]
    [Text(60)]
    public required string Source { get; init; }

    /// <summary>How far the source was opened for it.</summary>
    [Meaning("How far the source was opened.")]
    public required Certainty Certainty { get; init; }
}
