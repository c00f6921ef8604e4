using Cavaxis.Devices.Bench;
using Cavaxis.Devices.Cannulae;

namespace Cavaxis.Cli.Commands;

/// <summary>What an import gave.</summary>
/// <param name="Cannula">The cannula.</param>
/// <param name="Purpose">Lumen that was measured.</param>
/// <param name="Points">Number of points.</param>
/// <param name="Curve">The fitted curve.</param>
/// <param name="Quality">How well it fits.</param>
/// <param name="SavedIn">Catalogue it was saved in, or null.</param>
public sealed record ImportSheet(
    CannulaRow Cannula, LumenPurpose Purpose, int Points, WaterCurve Curve, WaterCurveQuality Quality, string? SavedIn);
