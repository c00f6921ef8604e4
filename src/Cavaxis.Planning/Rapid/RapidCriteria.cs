using Cavaxis.Planning.Case;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rapid;

/// <summary>Questions, criteria, situations and published cohorts as data. A programme may hand in its own file.</summary>
[Meaning("Questions, selection criteria, situations and published cohorts for decisions within minutes.")]
public sealed record RapidCriteria
{
    /// <summary>Version of the format.</summary>
    [Meaning("Version of the format.")]
    [Number(1, 1, "1")]
    public required int CavaxisRapidCriteria { get; init; }

    /// <summary>Edition of the content.</summary>
    [Meaning("Edition of the content.")]
    [Text(60)]
    public required string Edition { get; init; }

    /// <summary>Who changed it.</summary>
    [Meaning("Who changed the file; needed where it differs from the built-in one.")]
    [Text(120)]
    public string? ChangedBy { get; init; }

    /// <summary>Why it was changed.</summary>
    [Meaning("Why the file was changed; needed where it differs from the built-in one.")]
    [Text(600)]
    public string? ChangeReason { get; init; }

    /// <summary>Sources.</summary>
    [Meaning("Sources of criteria, findings and cohorts.")]
    [Text(500)]
    public required IReadOnlyList<RapidSource> Sources { get; init; }

    /// <summary>Questions.</summary>
    [Meaning("Questions that criteria and cohorts ask.")]
    [Text(300)]
    public required IReadOnlyList<RapidQuestion> Questions { get; init; }

    /// <summary>Situations.</summary>
    [Meaning("Every situation once.")]
    [Text(20)]
    public required IReadOnlyList<SituationRule> Situations { get; init; }

    /// <summary>Criteria.</summary>
    [Meaning("Selection criteria.")]
    [Text(1000)]
    public required IReadOnlyList<SelectionCriterion> Criteria { get; init; }

    /// <summary>Published cohorts.</summary>
    [Meaning("What became of published patients.")]
    [Text(1000)]
    public required IReadOnlyList<PublishedCohort> Cohorts { get; init; }

    /// <summary>Rows that do not agree.</summary>
    [Meaning("Published rows that do not agree.")]
    [Text(100)]
    public IReadOnlyList<CohortConflict> Conflicts { get; init; } = [];

    /// <summary>A source as it is printed.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="certainty">How far it was opened for what is cited.</param>
    /// <returns>The source.</returns>
    public Source SourceOf(string id, Certainty certainty) => new(Sources.First(source => source.Id == id).Citation, certainty);
}
