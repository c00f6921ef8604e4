using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Rapid;

/// <summary>Where criteria and cohorts come from: first author and year, no names of trials, hospitals or places.</summary>
public sealed record RapidSource
{
    /// <summary>Stable name.</summary>
    [Meaning("Stable name of the source.")]
    [Text(60)]
    public required string Id { get; init; }

    /// <summary>First author, year, place of publication.</summary>
    [Meaning("First author, year and place of publication.")]
    [Text(300)]
    public required string Citation { get; init; }
}
