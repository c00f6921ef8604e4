using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Planning.Insertion;

/// <summary>What a drawing of an insertion shows.</summary>
/// <param name="Lumen">The middle anatomy.</param>
/// <param name="MiddleWire">The wire in it before the cannula, mm.</param>
/// <param name="MiddleCannula">What lies in it at the end, mm.</param>
/// <param name="Wires">The wire in each sampled anatomy, mm.</param>
/// <param name="Ends">Where each of them ends.</param>
/// <param name="Wanted">Where they ought to end.</param>
/// <param name="CannulaRadiusMm">Outer radius of the cannula.</param>
public sealed record InsertionPaths(
    CavalLumen Lumen,
    IReadOnlyList<Vector3D> MiddleWire,
    IReadOnlyList<Vector3D> MiddleCannula,
    IReadOnlyList<IReadOnlyList<Vector3D>> Wires,
    IReadOnlyList<WireEnd> Ends,
    WireEnd Wanted,
    double CannulaRadiusMm);
