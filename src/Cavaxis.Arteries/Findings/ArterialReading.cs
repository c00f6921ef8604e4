using System.Collections.Immutable;
using Cavaxis.Arteries.Tree;

namespace Cavaxis.Arteries.Findings;

/// <summary>One segment of the tree under this support, for the drawing and the table of arteries.</summary>
/// <param name="Name">Identifier of the segment in <c>catalogue/arteries.json</c>, such as <c>radial_R</c>.</param>
/// <param name="Title">Name in words, such as "right radial artery".</param>
/// <param name="Course">Where it lies in the drawing, from the heart outwards; at least two points.</param>
/// <param name="LengthCm">Length in this patient, cm.</param>
/// <param name="DiameterMm">Mean inner diameter in this patient at the mean pressure of the table, mm.</param>
/// <param name="HoldsCannula">True where the arterial cannula fills part of the lumen.</param>
/// <param name="MembraneShare">Share of blood from the membrane lung at its middle, 0 to 1.</param>
/// <param name="SaturationPercent">Saturation at its middle, %.</param>
/// <param name="Po2MmHg">Oxygen tension at its middle, mmHg.</param>
/// <param name="MeanFlowLPerMin">Mean flow at its middle, positive away from the heart, L/min.</param>
/// <param name="PressureMmHg">Pressure at its middle, mmHg.</param>
public sealed record ArterialReading(
    string Name,
    string Title,
    ImmutableArray<LayoutPoint> Course,
    double LengthCm,
    double DiameterMm,
    bool HoldsCannula,
    OverBeat MembraneShare,
    OverBeat SaturationPercent,
    OverBeat Po2MmHg,
    double MeanFlowLPerMin,
    OverBeat PressureMmHg);
