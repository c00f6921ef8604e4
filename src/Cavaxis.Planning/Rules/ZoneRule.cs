using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rules;

/// <summary>Where a port of a cannula has to lie, told by landmarks, with its rationale. Programmes may edit it.</summary>
public sealed record ZoneRule
{
    /// <summary>Stable name of the rule.</summary>
    [Meaning("Stable name of the rule.")]
    [Text(60)]
    public required string Id { get; init; }

    /// <summary>Configurations the rule belongs to.</summary>
    [Meaning("Configurations the rule belongs to.")]
    [Text(10)]
    public required IReadOnlyList<ConfigurationKind> Configurations { get; init; }

    /// <summary>Role of the cannula.</summary>
    [Meaning("Role of the cannula.")]
    public required CannulaRole Role { get; init; }

    /// <summary>Name of the hole group, or null where the part is the tip.</summary>
    [Meaning("Name of the hole group in the catalogue; left out where the part is the tip.")]
    [Text(40)]
    public string? Port { get; init; }

    /// <summary>Which part of the port is meant.</summary>
    [Meaning("Which part of the port must lie in the zone.")]
    public required PortPart Part { get; init; }

    /// <summary>Landmark of the upper bound.</summary>
    [Meaning("Landmark of the upper bound (towards the head).")]
    public required Landmark FromLandmark { get; init; }

    /// <summary>Offset of the upper bound, mm, towards the feet.</summary>
    [Meaning("Offset of the upper bound from its landmark, mm, positive towards the feet.")]
    [Number(-400, 400, "mm")]
    public required double FromOffsetMm { get; init; }

    /// <summary>Landmark of the lower bound.</summary>
    [Meaning("Landmark of the lower bound (towards the feet).")]
    public required Landmark ToLandmark { get; init; }

    /// <summary>Offset of the lower bound, mm, towards the feet.</summary>
    [Meaning("Offset of the lower bound from its landmark, mm, positive towards the feet.")]
    [Number(-400, 400, "mm")]
    public required double ToOffsetMm { get; init; }

    /// <summary>True where the offsets shrink with body height below the adult reference of 170 cm.</summary>
    [Meaning("True where the offsets shrink with body height below the adult reference of 170 cm.")]
    public bool ScalesWithHeight { get; init; }

    /// <summary>Why the rule exists.</summary>
    [Meaning("Why the rule exists.")]
    [Text(600)]
    public required string Rationale { get; init; }

    /// <summary>Where it comes from.</summary>
    [Meaning("Where the rule comes from.")]
    [Text(300)]
    public required string Citation { get; init; }

    /// <summary>How sure its source is.</summary>
    [Meaning("How far the source was opened.")]
    public required Certainty Certainty { get; init; }

    /// <summary>Citation and certainty as one source.</summary>
    /// <returns>The source.</returns>
    public Source ToSource() => new(Citation, Certainty);
}
