using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Hydraulics;

/// <summary>Liquid water at atmospheric pressure, the fluid of bench curves.</summary>
public static class Water
{
    /// <summary>Lowest temperature accepted, °C.</summary>
    public const double LowestTemperatureC = 5;

    /// <summary>Highest temperature accepted, °C.</summary>
    public const double HighestTemperatureC = 45;

    /// <summary>
    /// Density after Kell (1975), J Chem Eng Data 20:97, and viscosity after Kestin, Sokolov and Wakeham (1978),
    /// J Phys Chem Ref Data 7:941, both recalled and then held against printed tables in the reference rows.
    /// </summary>
    /// <param name="temperatureC">Temperature, 5 to 45 °C.</param>
    /// <returns>Density and viscosity.</returns>
    /// <exception cref="InputFaultException">The temperature is outside the range.</exception>
    public static Fluid At(double temperatureC)
    {
        double t = Require.InRange(
            temperatureC, LowestTemperatureC, HighestTemperatureC, "temperature [degC]", "Give the temperature of the water on the bench.");
        double density = (999.83952 + (t * (16.945176 + (t * (-7.9870401e-3 + (t * (-46.170461e-6 + (t * (105.56302e-9 - (t * 280.54253e-12))))))))))
            / (1 + (16.879850e-3 * t));
        double below20 = 20 - t;
        double log10Ratio = below20 / (t + 96) * (1.2364 - (1.37e-3 * below20) + (5.7e-6 * below20 * below20));
        return new Fluid(density, 1.002e-3 * Math.Pow(10, log10Ratio));
    }
}
