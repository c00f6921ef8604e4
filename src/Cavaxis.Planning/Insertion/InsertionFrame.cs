using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;
using Cavaxis.Planning.Steps;

namespace Cavaxis.Planning.Insertion;

/// <summary>One moment of an insertion that is played.</summary>
/// <param name="Phase">Part of the insertion.</param>
/// <param name="PathMm">Line on which everything inserted lies, from the skin, mm.</param>
/// <param name="ArcsMm">Length from the skin to each of its points, mm.</param>
/// <param name="WireMm">How deep the wire's tip lies along the line, mm; zero where it is out.</param>
/// <param name="IntroducerMm">How deep that of the introducer lies, mm.</param>
/// <param name="CannulaMm">How deep that of the cannula lies, mm.</param>
/// <param name="TipAt">Where the deepest tip lies.</param>
/// <param name="TipForceN">Force between the deepest tip and the wall, N; there is no limit to compare it with.</param>
/// <param name="LargestContactN">Largest force between one place and the wall, N.</param>
public sealed record InsertionFrame(
    InsertionPhase Phase,
    IReadOnlyList<Vector3D> PathMm,
    IReadOnlyList<double> ArcsMm,
    double WireMm,
    double IntroducerMm,
    double CannulaMm,
    LumenSite TipAt,
    double TipForceN,
    double LargestContactN);
