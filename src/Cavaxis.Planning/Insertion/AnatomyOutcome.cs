using System.Collections.Immutable;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;
using Cavaxis.Planning.Steps;

namespace Cavaxis.Planning.Insertion;

/// <summary>What happened in one anatomy.</summary>
internal sealed record AnatomyOutcome
{
    /// <summary>Where the wire lay before the cannula.</summary>
    public required WireEnd AfterFeed { get; init; }

    /// <summary>Where it lay after the cannula had come over it.</summary>
    public required WireEnd AfterAdvance { get; init; }

    /// <summary>Where the tip of the cannula lay at the end.</summary>
    public required LumenSite CannulaTip { get; init; }

    /// <summary>The first part that went wrong.</summary>
    public required InsertionPhase WrongAt { get; init; }

    /// <summary>How far the wire's tip was drawn back while the cannula advanced, mm.</summary>
    public required double WireLostMm { get; init; }

    /// <summary>Largest force between the wire's tip and a wall while it was fed, N.</summary>
    public required double TipForceN { get; init; }

    /// <summary>Where that was.</summary>
    public required LumenSite TipForceAt { get; init; }

    /// <summary>Largest force between one place of the cannula and a wall while it advanced, N.</summary>
    public required double CannulaForceN { get; init; }

    /// <summary>Why it could not be followed to the end; empty where it was.</summary>
    public required string Fault { get; init; }

    /// <summary>Deepest that any piece lay in a wall at rest, mm.</summary>
    public required double PenetrationMm { get; init; }

    /// <summary>The wire before the cannula, from the skin, mm.</summary>
    public required ImmutableArray<Vector3D> WirePath { get; init; }

    /// <summary>What lay in the body at the end, mm.</summary>
    public required ImmutableArray<Vector3D> FinalPath { get; init; }

    /// <summary>True where every part went as it should.</summary>
    public bool IsRight => WrongAt == InsertionPhase.None && Fault.Length == 0;
}
