using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.CarbonDioxide;

/// <summary>
/// Carbon dioxide content of plasma and whole blood after Douglas, Jones and Reed 1988, with the solubility and apparent
/// pK of Kelman 1967. Measured on nine healthy men between pH 7.3 and 7.5; outside it is an extrapolation.
/// </summary>
public static class CarbonDioxideContent
{
    /// <summary>Standard deviation of the authors' calculated minus measured content, mL/dL.</summary>
    public const double SdMlPerDl = 1.19;

    internal const double LowestPH = 6.5;

    // Above this the authors' factor (8.142 − pH) takes polycythaemic blood towards nothing.
    internal const double HighestPH = 7.7;

    /// <summary>Where the equation comes from.</summary>
    public static IReadOnlyList<Source> Sources { get; } =
    [
        new("Douglas, Jones, Reed 1988, J Appl Physiol 65:473, abstract: plasma equation and fit", Certainty.Seen),
        new(
            "Douglas et al. 1988, whole-blood factor, and Kelman 1967, Respir Physiol 3:111, as transcribed in a "
            + "public physiology package",
            Certainty.SeenSecondHand),
    ];

    /// <summary>Solubility of carbon dioxide in plasma.</summary>
    /// <param name="temperatureC">Temperature, 10 to 45 °C.</param>
    /// <returns>Solubility, mmol/L/mmHg.</returns>
    /// <exception cref="InputFaultException">The temperature is not finite or out of range.</exception>
    public static double SolubilityMmolPerLPerMmHg(double temperatureC)
    {
        double below = 37 - BloodInput.Temperature(temperatureC, 10, 45);
        return 0.0307 + (0.00057 * below) + (0.00002 * below * below);
    }

    /// <summary>Apparent first pK of carbonic acid in plasma.</summary>
    /// <param name="pH">Plasma pH, 6.5 to 7.7.</param>
    /// <param name="temperatureC">Temperature, 10 to 45 °C.</param>
    /// <returns>The apparent pK.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static double ApparentPk(double pH, double temperatureC)
    {
        double acid = 7.4 - PHInRange(pH);
        return 6.086 + (0.042 * acid)
            + ((38 - BloodInput.Temperature(temperatureC, 10, 45)) * (0.00472 + (0.00139 * acid)));
    }

    /// <summary>Content of plasma.</summary>
    /// <param name="pco2MmHg">Carbon dioxide tension, 0 to 400 mmHg.</param>
    /// <param name="pH">Plasma pH, 6.5 to 7.7.</param>
    /// <param name="temperatureC">Temperature, 10 to 45 °C.</param>
    /// <returns>Content, mL/dL.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static double PlasmaMlPerDl(double pco2MmHg, double pH, double temperatureC) =>
        Pco2InRange(pco2MmHg) * PlasmaMlPerDlPerMmHg(pH, temperatureC);

    /// <summary>Content of whole blood.</summary>
    /// <param name="pco2MmHg">Carbon dioxide tension, 0 to 400 mmHg.</param>
    /// <param name="pH">Plasma pH, 6.5 to 7.7.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 0 to 25 g/dL.</param>
    /// <param name="saturation">Oxygen saturation, a fraction from 0 to 1.</param>
    /// <param name="temperatureC">Temperature, 10 to 45 °C.</param>
    /// <returns>Content, mL/dL.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static double MlPerDl(
        double pco2MmHg, double pH, double haemoglobinGPerDl, double saturation, double temperatureC) =>
        PlasmaMlPerDl(pco2MmHg, pH, temperatureC) * BloodOverPlasma(pH, haemoglobinGPerDl, saturation);

    /// <summary>
    /// Tension that gives a content at a known pH: the exact inverse of <see cref="MlPerDl"/>, which is linear in PCO2.
    /// </summary>
    /// <param name="contentMlPerDl">Content, 0 to 200 mL/dL.</param>
    /// <param name="pH">Plasma pH, 6.5 to 7.7.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 0 to 25 g/dL.</param>
    /// <param name="saturation">Oxygen saturation, a fraction from 0 to 1.</param>
    /// <param name="temperatureC">Temperature, 10 to 45 °C.</param>
    /// <returns>Carbon dioxide tension, mmHg.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static double Pco2At(
        double contentMlPerDl, double pH, double haemoglobinGPerDl, double saturation, double temperatureC) =>
        ContentInRange(contentMlPerDl)
            / (PlasmaMlPerDlPerMmHg(pH, temperatureC) * BloodOverPlasma(pH, haemoglobinGPerDl, saturation));

    /// <summary>Checks a carbon dioxide content.</summary>
    internal static double ContentInRange(double mlPerDl) => Require.InRange(
        mlPerDl, 0, 200, "carbonDioxideContentMlPerDl", "Give the content in mL of gas per dL of blood.");

    /// <summary>Checks a carbon dioxide tension.</summary>
    internal static double Pco2InRange(double mmHg) => Require.InRange(
        mmHg, 0, 400, "pco2MmHg", "Give the carbon dioxide tension in mmHg (1 kPa is 7.5 mmHg).");

    /// <summary>Checks a pH.</summary>
    internal static double PHInRange(double pH) =>
        Require.InRange(pH, LowestPH, HighestPH, "pH", "Give the plasma pH.");

    private static double PlasmaMlPerDlPerMmHg(double pH, double temperatureC) =>
        2.226 * SolubilityMmolPerLPerMmHg(temperatureC) * (1 + Math.Pow(10, pH - ApparentPk(pH, temperatureC)));

    private static double BloodOverPlasma(double pH, double haemoglobinGPerDl, double saturation) =>
        1 - (0.0289 * BloodInput.Haemoglobin(haemoglobinGPerDl)
            / ((3.352 - (0.456 * BloodInput.Saturation(saturation))) * (8.142 - PHInRange(pH))));
}
