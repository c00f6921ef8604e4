namespace Cavaxis.Devices.Hydraulics;

/// <summary>The hydraulic state of one lumen at one flow.</summary>
/// <param name="PressureDropPa">Magnitude of the pressure difference between the vessel and the hub, Pa; not negative.</param>
/// <param name="RelativeSd">Relative standard deviation of the drop from geometry, correlation and bench scatter.</param>
/// <param name="HoleShares">Fraction of the flow through each hole group, in the lumen's order (hub side first); sums to one.</param>
/// <param name="LargestReynolds">Largest Reynolds number along the body.</param>
/// <param name="LargestHoleVelocityMPerS">Mean velocity in the fastest hole group.</param>
public sealed record LumenFlow(
    double PressureDropPa,
    double RelativeSd,
    IReadOnlyList<double> HoleShares,
    double LargestReynolds,
    double LargestHoleVelocityMPerS);
