using Cavaxis.Devices.Cannulae;
using Cavaxis.Quantities;

namespace Cavaxis.Cli.Commands;

/// <summary>Everything about one cannula.</summary>
/// <param name="Cannula">Its row in the list.</param>
/// <param name="GeometrySource">Where its numbers come from.</param>
/// <param name="LargestWireMm">Largest wire, mm.</param>
/// <param name="DepthMarksEveryMm">Spacing of depth marks, mm.</param>
/// <param name="BendingStiffnessNMm2">Range of bending stiffness considered, N mm².</param>
/// <param name="Lumens">Its lumens.</param>
public sealed record CannulaSheet(
    CannulaRow Cannula,
    Source GeometrySource,
    double? LargestWireMm,
    double? DepthMarksEveryMm,
    StiffnessRange? BendingStiffnessNMm2,
    IReadOnlyList<LumenSheet> Lumens);
