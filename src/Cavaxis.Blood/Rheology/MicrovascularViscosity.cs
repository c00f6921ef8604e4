using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Rheology;

/// <summary>
/// Apparent viscosity of blood in glass tubes from 3 µm to 2 mm (Pries, Neuhaus, Gaehtgens 1992). For the microcirculation
/// only; devices and large vessels use <see cref="BloodViscosity"/>.
/// </summary>
public static class MicrovascularViscosity
{
    private const double ReferenceHaematocrit = 0.45;

    /// <summary>Where the equation comes from.</summary>
    public static Source Source { get; } = new(
        "Pries, Neuhaus, Gaehtgens 1992, Am J Physiol 263:H1770, as transcribed in public microcirculation codes", Certainty.SeenSecondHand);

    /// <summary>Apparent viscosity relative to plasma.</summary>
    /// <param name="haematocrit">Discharge haematocrit, a fraction from 0 to 0.75.</param>
    /// <param name="diameterMicrometre">Inner diameter, 3 to 2000 µm.</param>
    /// <returns>Relative apparent viscosity.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static double Relative(double haematocrit, double diameterMicrometre)
    {
        double h = BloodInput.Haematocrit(haematocrit);
        double d = Require.InRange(
            diameterMicrometre, 3, 2000, "diameterMicrometre",
            "Use the high-shear viscosity for anything wider than 2 mm.");
        double atReference = (220 * Math.Exp(-1.3 * d)) + 3.2 - (2.44 * Math.Exp(-0.06 * Math.Pow(d, 0.645)));
        double narrow = 1 / (1 + (1e-11 * Math.Pow(d, 12)));
        double curvature = ((0.8 + Math.Exp(-0.075 * d)) * (narrow - 1)) + narrow;
        return 1 + ((atReference - 1) * Shape(1 - h, curvature) / Shape(1 - ReferenceHaematocrit, curvature));
    }

    /// <summary>Apparent viscosity with the plasma viscosity of <see cref="BloodViscosity"/> at the temperature.</summary>
    /// <param name="haematocrit">Discharge haematocrit, a fraction from 0 to 0.75.</param>
    /// <param name="diameterMicrometre">Inner diameter, 3 to 2000 µm.</param>
    /// <param name="temperatureC">Temperature, 10 to 45 °C.</param>
    /// <returns>Apparent viscosity, Pa s.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static double PascalSeconds(double haematocrit, double diameterMicrometre, double temperatureC) =>
        BloodViscosity.PascalSeconds(0, temperatureC) * Relative(haematocrit, diameterMicrometre);

    // (x^C − 1)/C, which tends to ln x: the published quotient of two such terms is 0/0 where C passes through zero near 10 µm.
    private static double Shape(double x, double c)
    {
        double log = Math.Log(x);
        double small = c * log;
        return Math.Abs(small) < 1e-6 ? log * (1 + (small / 2)) : (Math.Exp(small) - 1) / c;
    }
}
