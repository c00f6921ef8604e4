using Cavaxis.Devices.Cannulae;

namespace Cavaxis.Planning.Running;

/// <summary>A cannula in the venous axis: planned, or as it lies.</summary>
/// <param name="Cannula">The device.</param>
/// <param name="TipMm">Position of its tip: arc length from the superior cavo-atrial junction, mm, positive to the feet.</param>
/// <param name="FromNeck">True when placed from the neck, false from the groin.</param>
/// <param name="FlowLPerMin">Flow through it, above zero.</param>
/// <param name="RotationDeg">Turn of a side port away from the tricuspid valve, degrees; without meaning for other devices.</param>
internal readonly record struct LyingCannula(Cannula Cannula, double TipMm, bool FromNeck, double FlowLPerMin, double RotationDeg);
