using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Oxygen;

/// <summary>
/// Oxygen dissociation of human haemoglobin: Severinghaus 1979 for the standard curve, shifted to a virtual PO2 by
/// temperature, pH and PCO2 in the form of Kelman 1966 and by 2,3-DPG after Siggaard-Andersen 1984.
/// </summary>
/// <remarks>
/// The shift multiplies PO2 by one factor that does not depend on PO2, so the inverse is exact. Severinghaus' own
/// coefficients are not used for the shift: his temperature coefficient is that of a sealed sample, whose pH moves with
/// temperature and whose dissolved oxygen counts, and his Bohr coefficient mixes fixed acid with carbon dioxide.
/// <c>docs/models/blood.md</c> shows both forms side by side.
/// </remarks>
public static class OxygenDissociation
{
    /// <summary>Change of log10 PO2 at constant saturation and pH for one degree (Kelman 1966).</summary>
    public const double Log10TemperatureCoefficientPerC = 0.024;

    /// <summary>Change of log10 PO2 at constant saturation and PCO2 for one unit of pH (Kelman 1966).</summary>
    public const double Log10BohrCoefficient = -0.40;

    /// <summary>Change of log10 PO2 at constant saturation and pH for a tenfold PCO2 (Kelman 1966).</summary>
    public const double Log10CarbonDioxideCoefficient = 0.06;

    /// <summary>Change of ln PO2 at constant saturation for one mmol/L of 2,3-DPG (Siggaard-Andersen et al. 1984).</summary>
    public const double LnDpgCoefficientPerMmolPerL = 0.07;

    /// <summary>Highest accepted oxygen tension, mmHg. The curve was measured to 500 mmHg.</summary>
    public const double HighestPo2MmHg = BloodInput.HighestPo2;

    /// <summary>Highest saturation with an oxygen tension of its own; full saturation has none.</summary>
    public const double HighestSaturation = BloodInput.HighestSaturation;

    // S = u / (u + Half) with u = P³ + Linear P (Severinghaus 1979, equation 1).
    private const double Linear = 150;
    private const double Half = 23400;

    private const double Ln10 = 2.302585092994045684;

    /// <summary>Where the curve and its shifts come from.</summary>
    public static IReadOnlyList<Source> Sources { get; } =
    [
        new("Severinghaus 1979, J Appl Physiol 46:599, equation 1", Certainty.Seen),
        new(
            "Kelman 1966, J Appl Physiol 21:1375, virtual PO2, as transcribed in a public physiology package",
            Certainty.SeenSecondHand),
        new("Siggaard-Andersen et al. 1984, Clin Chem 30:1646, 2,3-DPG term", Certainty.Seen),
    ];

    /// <summary>Saturation at an oxygen tension.</summary>
    /// <param name="po2MmHg">Oxygen tension, 0 to 3000 mmHg.</param>
    /// <param name="c">Conditions of the blood.</param>
    /// <returns>Functional saturation O2Hb/(O2Hb + HHb), a fraction from 0 to 1.</returns>
    /// <exception cref="InputFaultException">The tension is not finite or out of range, or the conditions are missing.</exception>
    public static double SaturationAt(double po2MmHg, in BloodConditions c) =>
        StandardSaturation(BloodInput.Po2(po2MmHg) * c.RequireVirtualPo2Factor());

    /// <summary>Oxygen tension at a saturation: the exact inverse of <see cref="SaturationAt"/>.</summary>
    /// <param name="saturation">Saturation, a fraction from 0 to <see cref="HighestSaturation"/>.</param>
    /// <param name="c">Conditions of the blood.</param>
    /// <returns>Oxygen tension, mmHg.</returns>
    /// <exception cref="InputFaultException">The saturation is not finite or out of range, or the conditions are missing.</exception>
    public static double Po2At(double saturation, in BloodConditions c) =>
        StandardPo2(BloodInput.SaturationBelowOne(saturation)) / c.RequireVirtualPo2Factor();

    /// <summary>Oxygen tension at half saturation.</summary>
    /// <param name="c">Conditions of the blood.</param>
    /// <returns>P50, mmHg.</returns>
    /// <exception cref="InputFaultException">The conditions are missing.</exception>
    public static double P50MmHg(in BloodConditions c) => Po2At(0.5, c);

    /// <summary>Natural logarithm of virtual over real PO2.</summary>
    internal static double LnVirtualShift(double pH, double temperatureC, double dpgMmolPerL, double pco2MmHg)
    {
        double log10 = (Log10TemperatureCoefficientPerC * (BloodConditions.StandardTemperatureC - temperatureC))
            - (Log10BohrCoefficient * (pH - BloodConditions.StandardPH))
            - (Log10CarbonDioxideCoefficient * Math.Log10(pco2MmHg / BloodConditions.StandardPco2MmHg));
        return (log10 * Ln10)
            - (LnDpgCoefficientPerMmolPerL * (dpgMmolPerL - BloodConditions.StandardDpgMmolPerL));
    }

    /// <summary>Saturation on the standard curve, unchecked, for inner loops.</summary>
    internal static double StandardSaturation(double virtualPo2)
    {
        double u = virtualPo2 * ((virtualPo2 * virtualPo2) + Linear);
        return u / (u + Half);
    }

    /// <summary>Slope of the standard curve, 1/mmHg, unchecked.</summary>
    internal static double StandardSlope(double virtualPo2)
    {
        double square = virtualPo2 * virtualPo2;
        double below = (virtualPo2 * (square + Linear)) + Half;
        return Half * ((3 * square) + Linear) / (below * below);
    }

    /// <summary>
    /// Tension on the standard curve, unchecked. P³ + 150 P = 2A with A = 11700 S/(1 − S) has one real root (Cardano),
    /// P = q − 50/q with q³ = A + √(50³ + A²). One Newton step takes off the cancellation near zero.
    /// </summary>
    internal static double StandardPo2(double saturation)
    {
        const double third = Linear / 3;
        double a = 0.5 * Half * saturation / (1 - saturation);
        double q = Math.Cbrt(a + Math.Sqrt((third * third * third) + (a * a)));
        double p = q - (third / q);
        return p - (((p * ((p * p) + Linear)) - (2 * a)) / ((3 * p * p) + Linear));
    }
}
