using System.Text.Json.Serialization;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Planning.Configurations;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Insertion;

/// <summary>How the insertion of one cannula of a plan goes over the sampled anatomies.</summary>
public sealed record CannulaInsertion
{
    /// <summary>What the cannula does.</summary>
    public required CannulaRole Role { get; init; }

    /// <summary>Identifier in the catalogue.</summary>
    public required string DeviceId { get; init; }

    /// <summary>Vessel it enters.</summary>
    public required AccessRoute Route { get; init; }

    /// <summary>Side of the body.</summary>
    public required BodySide Side { get; init; }

    /// <summary>Depth of its tip from the skin, cm.</summary>
    public required double DepthCm { get; init; }

    /// <summary>Length of wire in the middle anatomy, cm.</summary>
    public required double WireCm { get; init; }

    /// <summary>Share of the anatomies that could be followed to the end in which every part went as it should.</summary>
    public required Estimate Right { get; init; }

    /// <summary>Where the wire ends.</summary>
    public required IReadOnlyList<WireEndShare> WireEnds { get; init; }

    /// <summary>Which part goes wrong first.</summary>
    public required IReadOnlyList<PhaseShare> FirstWrong { get; init; }

    /// <summary>Where the tip of the cannula lies at the end, with shares.</summary>
    public required IReadOnlyDictionary<LumenSite, double> CannulaTips { get; init; }

    /// <summary>Largest force between the wire's tip and a wall while it is fed, N: median with the middle nine tenths. There is no limit to compare it with.</summary>
    public required Estimate WireTipForceN { get; init; }

    /// <summary>Where that force most often is.</summary>
    public required LumenSite WireTipForceAt { get; init; }

    /// <summary>Largest force between one place of the cannula and a wall while it advances, N.</summary>
    public required Estimate CannulaForceN { get; init; }

    /// <summary>How far the wire's tip is drawn back while the cannula advances, mm.</summary>
    public required Estimate WireLostMm { get; init; }

    /// <summary>What done otherwise changes the result, best first.</summary>
    public required IReadOnlyList<InsertionAdvice> Advice { get; init; }

    /// <summary>Anatomies that could not be followed to the end, by reason.</summary>
    public required IReadOnlyDictionary<string, int> NotFollowed { get; init; }

    /// <summary>Deepest that any piece lay in a wall at rest, mm.</summary>
    public required double DeepestPenetrationMm { get; init; }

    /// <summary>Paths for a drawing; not part of the written result.</summary>
    [JsonIgnore]
    public InsertionPaths? Paths { get; init; }

    /// <summary>Insertions moment by moment, the middle anatomy first; empty where they were not asked for. Not part of the written result.</summary>
    [JsonIgnore]
    public IReadOnlyList<InsertionPlay> Plays { get; init; } = [];
}
