using Cavaxis.Devices.Cannulae;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>A group of holes of a cannula in the patient.</summary>
/// <param name="Name">The words of its label.</param>
/// <param name="Purpose">Drainage or return.</param>
/// <param name="PositionMm">Middle of the group, mm along the axis.</param>
/// <param name="SpanMm">Length of the group along the cannula, mm; zero for one hole.</param>
/// <param name="Facing">Where it looks.</param>
/// <param name="Zone">Where it is wanted; none where no rule applies.</param>
public sealed record ScenePort(
    string Name, LumenPurpose Purpose, Spread PositionMm, double SpanMm, PortFacing Facing = PortFacing.AllRound, PortZone? Zone = null);
