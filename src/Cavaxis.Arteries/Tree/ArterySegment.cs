using System.Collections.Immutable;

namespace Cavaxis.Arteries.Tree;

/// <summary>One segment of the table in the reference adult.</summary>
/// <param name="Name">Identifier, such as <c>radial_R</c>.</param>
/// <param name="Title">Name in words.</param>
/// <param name="From">Node at its beginning; 0 is the aortic valve.</param>
/// <param name="To">Node at its end.</param>
/// <param name="LengthMm">Length, mm.</param>
/// <param name="ProximalRadiusMm">Inner radius at its beginning at the reference pressure, mm.</param>
/// <param name="DistalRadiusMm">Inner radius at its end at the reference pressure, mm.</param>
/// <param name="WallMm">Thickness of the wall at its beginning, mm.</param>
/// <param name="Territory">What its end supplies; null where it divides.</param>
/// <param name="TableResistancePaSPerM3">Resistance of its end in the table, Pa s/m³; used as a share within a territory; null where it divides or was added.</param>
/// <param name="TableComplianceM3PerPa">Compliance of its end in the table, m³/Pa; null likewise.</param>
/// <param name="Course">Where it lies in the drawing.</param>
public sealed record ArterySegment(
    string Name,
    string Title,
    int From,
    int To,
    double LengthMm,
    double ProximalRadiusMm,
    double DistalRadiusMm,
    double WallMm,
    ArterialTerritory? Territory,
    double? TableResistancePaSPerM3,
    double? TableComplianceM3PerPa,
    ImmutableArray<LayoutPoint> Course);
