using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Rheology;

/// <summary>Density and viscosity of pure water at atmospheric pressure, for bench curves taken in water.</summary>
public static class WaterProperties
{
    /// <summary>Where the correlations come from.</summary>
    public static IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "Kell 1975, J Chem Eng Data 20:97, equation 16 (density, 0 to 150 °C), as transcribed in a public "
            + "simulation code",
            Certainty.SeenSecondHand),
        new(
            "Huber et al. 2009, J Phys Chem Ref Data 38:101, and IAPWS SR6-08 (viscosity at 0.1 MPa, 253 to 383 "
            + "K), as transcribed in a public water-property code",
            Certainty.SeenSecondHand),
    ];

    /// <summary>Density of air-free water.</summary>
    /// <param name="temperatureC">Temperature, 0 to 100 °C.</param>
    /// <returns>Density, kg/m³.</returns>
    /// <exception cref="InputFaultException">The temperature is not finite or out of range.</exception>
    public static double DensityKgPerM3(double temperatureC)
    {
        double t = BloodInput.Temperature(temperatureC, 0, 100);
        double above = 999.83952 + (t * (16.945176 + (t * (-7.9870401e-3 + (t * (-46.170461e-6
            + (t * (105.56302e-9 - (t * 280.54253e-12)))))))));
        return above / (1 + (16.879850e-3 * t));
    }

    /// <summary>Dynamic viscosity of water.</summary>
    /// <param name="temperatureC">Temperature, 0 to 100 °C.</param>
    /// <returns>Viscosity, Pa s.</returns>
    /// <exception cref="InputFaultException">The temperature is not finite or out of range.</exception>
    public static double ViscosityPascalSeconds(double temperatureC)
    {
        double reduced = (BloodInput.Temperature(temperatureC, 0, 100) + 273.15) / 300;
        return 1e-6 * ((280.68 * Math.Pow(reduced, -1.9)) + (511.45 * Math.Pow(reduced, -7.7))
            + (61.131 * Math.Pow(reduced, -19.6)) + (0.45903 * Math.Pow(reduced, -40)));
    }
}
