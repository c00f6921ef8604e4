namespace Cavaxis.Devices.Hydraulics;

/// <summary>The hydraulic state of one lumen at one flow.</summary>
/// <param name="PressureDropPa">
/// Magnitude of the pressure difference between the vessel and the hub, Pa; not negative. For drainage the hub pressure is the
/// static pressure in the hub bore (what a side port there reads); for return it is the total pressure, which a side port
/// reads lower by the velocity head of its bore. Either way the less favourable of the two.
/// </param>
/// <param name="RelativeSd">Relative standard deviation of the drop from geometry, correlation and bench scatter.</param>
/// <param name="HoleShares">Fraction of the flow through each hole group, in the lumen's order (hub side first); sums to one.</param>
/// <param name="LargestReynolds">Largest Reynolds number along the body.</param>
/// <param name="LargestHoleVelocityMPerS">Mean velocity in the fastest hole group.</param>
public sealed record LumenFlow(
    double PressureDropPa,
    double RelativeSd,
    IReadOnlyList<double> HoleShares,
    double LargestReynolds,
    double LargestHoleVelocityMPerS)
{
    /// <summary>True when the drop comes from a bench curve and not from the geometry alone.</summary>
    public bool FromBenchCurve { get; init; }

    /// <summary>True when the drop comes from a bench curve outside the Reynolds numbers that were measured.</summary>
    public bool BeyondBenchRange { get; init; }
}
