using Cavaxis.Planning.Case;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rapid;

/// <summary>What became of published patients. A row whose counts were not printed carries a share and no interval of ours.</summary>
public sealed record PublishedCohort
{
    /// <summary>Stable name.</summary>
    [Meaning("Stable name of the row.")]
    [Text(60)]
    public required string Id { get; init; }

    /// <summary>Where it is shown.</summary>
    [Meaning("Situations in which the row is shown.")]
    [Text(20)]
    public required IReadOnlyList<RapidSituation> Situations { get; init; }

    /// <summary>Whom it holds.</summary>
    [Meaning("Whether adults, children or both were counted.")]
    public required CohortAges Ages { get; init; }

    /// <summary>Of which patients it speaks; nothing for all.</summary>
    [Meaning("Of which patients the row speaks; left out for all.")]
    public AnswerCondition? When { get; init; }

    /// <summary>Who they were.</summary>
    [Meaning("Who was counted, in words.")]
    [Text(200)]
    public required string Profile { get; init; }

    /// <summary>What was counted.</summary>
    [Meaning("What was counted.")]
    [Text(120)]
    public required string Outcome { get; init; }

    /// <summary>How many had it; only where printed.</summary>
    [Meaning("How many had the outcome; only where the source prints the number.")]
    [Number(0, 1000000, "1")]
    public int? Count { get; init; }

    /// <summary>Of how many.</summary>
    [Meaning("Of how many.")]
    [Number(1, 1000000, "1")]
    public int? Of { get; init; }

    /// <summary>Share printed where no counts are.</summary>
    [Meaning("Share printed, percent, where the counts are not.")]
    [Number(0, 100, "%")]
    public double? SharePercent { get; init; }

    /// <summary>Lower end of the interval that the source prints.</summary>
    [Meaning("Lower end of the 95 percent interval that the source prints.")]
    [Number(0, 100, "%")]
    public double? PrintedLowPercent { get; init; }

    /// <summary>Upper end of the interval that the source prints.</summary>
    [Meaning("Upper end of the 95 percent interval that the source prints.")]
    [Number(0, 100, "%")]
    public double? PrintedHighPercent { get; init; }

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
