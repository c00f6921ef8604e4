namespace Cavaxis.Reports.AxisDrawings;

/// <summary>A cannula lying in the veins.</summary>
/// <param name="Name">The words of its label.</param>
/// <param name="Entry">Where it enters.</param>
/// <param name="OuterDiameterMm">Outer diameter of the part in the trunk, mm.</param>
/// <param name="TipMm">Where its tip lies, mm along the axis.</param>
/// <param name="Ports">Its groups of holes.</param>
/// <param name="TipZone">Where the tip is wanted; none where no rule applies.</param>
public sealed record SceneCannula(
    string Name, EntrySite Entry, double OuterDiameterMm, Spread TipMm, IReadOnlyList<ScenePort> Ports, PortZone? TipZone = null);
