using System.Globalization;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.CarbonDioxide;

/// <summary>
/// Base excess of whole blood at 37 °C in the form of Lang and Zander 2002, and the pH and PCO2 that follow when it is
/// held while carbon dioxide comes or goes, as in a membrane lung.
/// </summary>
public static class BaseExcess
{
    // BE = (1 − 0.0143 Hb)(0.0304 PCO2 10^(pH − 6.1) − 24.26 + (9.5 + 1.63 Hb)(pH − 7.4)) − 0.2 Hb (1 − S)
    private const double Solubility = 0.0304;
    private const double Pk = 6.1;
    private const double StandardBicarbonate = 24.26;

    /// <summary>Where the equation comes from.</summary>
    public static Source Source { get; } =
        new("Lang and Zander 2002, Clin Chem Lab Med 40:404, abstract (equation after Zander, with saturation term)", Certainty.Seen);

    /// <summary>Base excess from pH and PCO2.</summary>
    /// <param name="pH">Plasma pH, 6.5 to 7.7.</param>
    /// <param name="pco2MmHg">Carbon dioxide tension, 0 to 400 mmHg.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 0 to 25 g/dL.</param>
    /// <param name="saturation">Oxygen saturation, a fraction from 0 to 1.</param>
    /// <returns>Base excess of the fully oxygenated blood, mmol/L.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static double MmolPerL(double pH, double pco2MmHg, double haemoglobinGPerDl, double saturation)
    {
        double hb = BloodInput.Haemoglobin(haemoglobinGPerDl);
        double bicarbonate = Solubility * CarbonDioxideContent.Pco2InRange(pco2MmHg)
            * Math.Pow(10, CarbonDioxideContent.PHInRange(pH) - Pk);
        return ((1 - (0.0143 * hb)) * (bicarbonate - StandardBicarbonate + (Buffer(hb) * (pH - 7.4))))
            - (0.2 * hb * (1 - BloodInput.Saturation(saturation)));
    }

    /// <summary>PCO2 at a pH under a given base excess.</summary>
    /// <param name="pH">Plasma pH, 6.5 to 7.7.</param>
    /// <param name="baseExcessMmolPerL">Base excess, −30 to 30 mmol/L.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 0 to 25 g/dL.</param>
    /// <param name="saturation">Oxygen saturation, a fraction from 0 to 1.</param>
    /// <returns>Carbon dioxide tension, mmHg; zero or less where no tension reaches so high a pH.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static double Pco2At(double pH, double baseExcessMmolPerL, double haemoglobinGPerDl, double saturation)
    {
        double hb = BloodInput.Haemoglobin(haemoglobinGPerDl);
        double excess = Require.InRange(
            baseExcessMmolPerL, -30, 30, "baseExcessMmolPerL", "Give the base excess in mmol/L.");
        double bicarbonate = ((excess + (0.2 * hb * (1 - BloodInput.Saturation(saturation)))) / (1 - (0.0143 * hb)))
            + StandardBicarbonate - (Buffer(hb) * (CarbonDioxideContent.PHInRange(pH) - 7.4));
        return bicarbonate / (Solubility * Math.Pow(10, pH - Pk));
    }

    /// <summary>
    /// pH at a PCO2 under a given base excess. PCO2 falls as pH rises, so halving the pH range finds it to the last bit.
    /// </summary>
    /// <param name="pco2MmHg">Carbon dioxide tension, 0 to 400 mmHg.</param>
    /// <param name="baseExcessMmolPerL">Base excess, −30 to 30 mmol/L.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 0 to 25 g/dL.</param>
    /// <param name="saturation">Oxygen saturation, a fraction from 0 to 1.</param>
    /// <returns>Plasma pH.</returns>
    /// <exception cref="InputFaultException">A value is out of range or the pH would lie outside 6.5 to 7.7.</exception>
    public static double PhAt(
        double pco2MmHg, double baseExcessMmolPerL, double haemoglobinGPerDl, double saturation)
    {
        double target = CarbonDioxideContent.Pco2InRange(pco2MmHg);
        return Root(target, isContent: false, baseExcessMmolPerL, haemoglobinGPerDl, saturation);
    }

    /// <summary>
    /// pH and PCO2 at a carbon dioxide content under a given base excess. Along the line of constant base excess the
    /// content of Douglas et al. falls as pH rises, so there is one answer.
    /// </summary>
    /// <param name="contentMlPerDl">Carbon dioxide content of whole blood, mL/dL.</param>
    /// <param name="baseExcessMmolPerL">Base excess, −30 to 30 mmol/L.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 0 to 25 g/dL.</param>
    /// <param name="saturation">Oxygen saturation, a fraction from 0 to 1.</param>
    /// <returns>pH and PCO2 at 37 °C.</returns>
    /// <exception cref="InputFaultException">A value is out of range or the pH would lie outside 6.5 to 7.7.</exception>
    public static AcidBaseState AtContent(
        double contentMlPerDl, double baseExcessMmolPerL, double haemoglobinGPerDl, double saturation)
    {
        double target = CarbonDioxideContent.ContentInRange(contentMlPerDl);
        double pH = Root(target, isContent: true, baseExcessMmolPerL, haemoglobinGPerDl, saturation);
        return new AcidBaseState(pH, Pco2At(pH, baseExcessMmolPerL, haemoglobinGPerDl, saturation));
    }

    private static double Buffer(double haemoglobinGPerDl) => 9.5 + (1.63 * haemoglobinGPerDl);

    // Halving rather than a delegate-driven solver: no allocation, and 64 halvings reach the last bit of pH.
    private static double Root(
        double target, bool isContent, double baseExcessMmolPerL, double haemoglobinGPerDl, double saturation)
    {
        double Excess(double pH) => Pco2At(pH, baseExcessMmolPerL, haemoglobinGPerDl, saturation)
            - (isContent ? CarbonDioxideContent.Pco2At(target, pH, haemoglobinGPerDl, saturation, 37) : target);

        double low = CarbonDioxideContent.LowestPH;
        double high = CarbonDioxideContent.HighestPH;
        if (!(Excess(low) >= 0 && Excess(high) <= 0))
        {
            throw new InputFaultException(new InputFault(
                FaultCode.Contradiction,
                isContent ? "carbonDioxideContentMlPerDl" : "pco2MmHg",
                target.ToString("G6", CultureInfo.InvariantCulture),
                "a value that goes with a pH from 6.5 to 7.7",
                "Check carbon dioxide, base excess and haemoglobin together."));
        }

        for (int i = 0; i < 64; i++)
        {
            double middle = 0.5 * (low + high);
            if (Excess(middle) >= 0)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return 0.5 * (low + high);
    }
}
