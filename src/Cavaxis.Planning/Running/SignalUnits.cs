using Cavaxis.Circulation.Signals;

namespace Cavaxis.Planning.Running;

/// <summary>Unit of each signal of a waveform.</summary>
public static class SignalUnits
{
    /// <summary>Unit, as its name ends.</summary>
    /// <param name="signal">Which.</param>
    /// <returns>Unit; "1" for a pure number.</returns>
    public static string Of(Signal signal)
    {
        string name = signal.ToString();
        return Units.FirstOrDefault(u => name.EndsWith(u.Ending, StringComparison.Ordinal)).Unit ?? "1";
    }

    private static readonly (string Ending, string Unit)[] Units =
    [
        ("Pressure", "mmHg"), ("Volume", "mL"), ("Flow", "L/min"), ("Oxygen", "mL/dL"), ("CarbonDioxide", "mL/dL"), ("Po2", "mmHg"), ("Pco2", "mmHg"),
        ("OxygenDelivery", "mL/min"),
    ];
}
