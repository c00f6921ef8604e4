using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Rheology;

/// <summary>
/// Density of blood as plasma and red cells by volume, each falling linearly with temperature between the measurements at
/// 4 and 37 °C.
/// </summary>
public static class BloodDensity
{
    // Trudnowski and Rico 1974, referred to water at 4 °C (999.97 kg/m³).
    private const double WaterAt4 = 999.97;
    private const double PlasmaAt37 = 1.0205 * WaterAt4;
    private const double PlasmaAt4 = 1.0310 * WaterAt4;

    // The cells follow from the whole blood of the same volunteers at the assumed mean haematocrit.
    private const double AssumedHaematocrit = 0.46;
    private const double CellsAt37 = PlasmaAt37 + (((1.0506 * WaterAt4) - PlasmaAt37) / AssumedHaematocrit);
    private const double CellsAt4 = PlasmaAt4 + (((1.0621 * WaterAt4) - PlasmaAt4) / AssumedHaematocrit);

    /// <summary>Where the densities come from.</summary>
    public static IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "Trudnowski and Rico 1974, Clin Chem 20:615: blood 1.0506 and plasma 1.0205 at 37 °C, 1.0621 and "
            + "1.0310 at 4 °C, 25 volunteers",
            Certainty.Seen),
        new(
            "Mean haematocrit of those volunteers 0.46 (only the range 0.40 to 0.56 is published)",
            Certainty.Assumption),
    ];

    /// <summary>Density of whole blood.</summary>
    /// <param name="haematocrit">Haematocrit, a fraction from 0 to 0.75.</param>
    /// <param name="temperatureC">Temperature, 4 to 45 °C.</param>
    /// <returns>Density, kg/m³.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static double KgPerM3(double haematocrit, double temperatureC)
    {
        double h = BloodInput.Haematocrit(haematocrit);
        double warm = (BloodInput.Temperature(temperatureC, 4, 45) - 4) / (37 - 4);
        double plasma = PlasmaAt4 + (warm * (PlasmaAt37 - PlasmaAt4));
        double cells = CellsAt4 + (warm * (CellsAt37 - CellsAt4));
        return plasma + (h * (cells - plasma));
    }
}
