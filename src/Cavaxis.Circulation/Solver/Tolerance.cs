using Cavaxis.Circulation.Equations;

namespace Cavaxis.Circulation.Solver;

/// <summary>How much error a step may make.</summary>
/// <param name="Relative">Error over the larger of the quantity and its usual size.</param>
internal readonly record struct Tolerance(double Relative)
{
    /// <summary>Tolerance of results that people see.</summary>
    public static Tolerance Usual { get; } = new(1e-5);

    /// <summary>Usual size of a quantity of the state, below which the error counts as absolute; null for running totals, which follow the rest.</summary>
    /// <param name="index">Place in the state.</param>
    /// <param name="massRatio">Body mass over that of the adult.</param>
    /// <returns>Size in the unit of the quantity, or null.</returns>
    public static double? SizeOf(int index, double massRatio) => index switch
    {
        < StateIndex.VolumeCount => 20 * massRatio,
        < StateIndex.CircuitFlow => 60 * Math.Pow(massRatio, 0.75),
        StateIndex.CircuitFlow => 60 * Math.Pow(massRatio, 0.75),
        StateIndex.SpeedRatio => 1,
        StateIndex.SensedPressure => 50,
        < StateIndex.Oxygen => 1,
        < StateIndex.CarbonDioxide => 4 * massRatio,
        < StateIndex.Returned => 20 * massRatio,
        < StateIndex.AlveolarOxygen => 10 * massRatio,
        < StateIndex.OxygenFromLungs => 100 * massRatio,
        _ => null,
    };
}
