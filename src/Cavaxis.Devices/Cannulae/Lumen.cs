namespace Cavaxis.Devices.Cannulae;

/// <summary>One channel through a cannula.</summary>
/// <param name="Purpose">Direction of flow.</param>
/// <param name="Segments">
/// Stretches from hub (connector) to the tip of the cannula, at least one. A lumen that ends short of the tip still lists the stretch
/// beyond its last opening, so that distances from the tip hold for every lumen; nothing flows there.
/// </param>
/// <param name="HoleGroups">Openings to the vessel, ordered from the one nearest the hub to the one nearest the tip.</param>
public sealed record Lumen(LumenPurpose Purpose, IReadOnlyList<TubeSegment> Segments, IReadOnlyList<HoleGroup> HoleGroups);
