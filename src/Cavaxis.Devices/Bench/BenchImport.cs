using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Hydraulics;

namespace Cavaxis.Devices.Bench;

/// <summary>What a bench file gave: a cannula for the user's catalogue, and how well its curve fits.</summary>
/// <param name="Cannula">The cannula, with the curve at the lumen that was measured.</param>
/// <param name="Purpose">The lumen that was measured.</param>
/// <param name="Fluid">The liquid on the bench.</param>
/// <param name="Points">The points, in the order of the file.</param>
/// <param name="Curve">The fitted curve.</param>
/// <param name="Quality">How well it fits.</param>
public sealed record BenchImport(
    Cannula Cannula,
    LumenPurpose Purpose,
    Fluid Fluid,
    IReadOnlyList<BenchPoint> Points,
    WaterCurve Curve,
    WaterCurveQuality Quality);
