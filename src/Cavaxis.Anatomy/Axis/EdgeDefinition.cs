using Cavaxis.Quantities;

namespace Cavaxis.Anatomy.Axis;

/// <summary>Where an edge lies against the model's own edge of the same junction, in the reference adult of 170
/// cm.</summary>
/// <param name="Edge">The edge.</param>
/// <param name="IsSuperior">True at the superior junction, false at the inferior one.</param>
/// <param name="BelowOwnEdgeMm">How far below the model's own edge it lies, mm; negative is above.</param>
/// <param name="SdMm">Spread of that distance between people and readers, mm.</param>
/// <param name="Source">Where the numbers come from.</param>
public sealed record EdgeDefinition(
    JunctionEdge Edge, bool IsSuperior, double BelowOwnEdgeMm, double SdMm, Source Source);
