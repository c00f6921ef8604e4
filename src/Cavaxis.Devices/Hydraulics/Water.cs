using Cavaxis.Blood.Rheology;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Hydraulics;

/// <summary>Liquid water at atmospheric pressure, the fluid of bench curves.</summary>
public static class Water
{
    /// <summary>Lowest temperature accepted, °C.</summary>
    public const double LowestTemperatureC = 5;

    /// <summary>Highest temperature accepted, °C.</summary>
    public const double HighestTemperatureC = 45;

    /// <summary>The liquid at a temperature, from the blood room's water properties.</summary>
    /// <param name="temperatureC">Temperature, 5 to 45 °C.</param>
    /// <returns>Density and viscosity.</returns>
    /// <exception cref="InputFaultException">The temperature is outside the range.</exception>
    public static Fluid At(double temperatureC)
    {
        double t = Require.InRange(
            temperatureC, LowestTemperatureC, HighestTemperatureC, "temperature [degC]", "Give the temperature of the water on the bench.");
        return new Fluid(WaterProperties.DensityKgPerM3(t), WaterProperties.ViscosityPascalSeconds(t));
    }
}
