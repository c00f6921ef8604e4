using Cavaxis.Anatomy.Lumens;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Insertion;

/// <summary>One insertion moment by moment in one anatomy: the middle one, or one in which it goes as it goes in a share of the sampled ones.</summary>
/// <param name="Anatomy">Number of the sampled anatomy, from 1; zero for the middle one.</param>
/// <param name="End">Where the wire ends before the cannula.</param>
/// <param name="EndAfterCannula">Where it ends after the cannula has come over it.</param>
/// <param name="CannulaTip">Where the tip of the cannula lies at the end.</param>
/// <param name="WrongAt">The part that goes wrong first.</param>
/// <param name="WrongFrame">The frame from which on that is so; null where nothing goes wrong.</param>
/// <param name="Share">Share of the sampled anatomies that go this way; null for the middle one.</param>
/// <param name="Lumen">The anatomy.</param>
/// <param name="CannulaRadiusMm">Outer radius of the cannula, mm.</param>
/// <param name="Frames">Its moments.</param>
public sealed record InsertionPlay(
    int Anatomy,
    WireEnd End,
    WireEnd EndAfterCannula,
    LumenSite CannulaTip,
    InsertionPhase WrongAt,
    int? WrongFrame,
    Estimate? Share,
    CavalLumen Lumen,
    double CannulaRadiusMm,
    IReadOnlyList<InsertionFrame> Frames);
