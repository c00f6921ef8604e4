using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Oxygen;

/// <summary>
/// Oxygen dissociation of human haemoglobin: Severinghaus 1979 for the standard curve, with a small correction that brings his
/// equation onto his own measured points, shifted to a virtual PO2 by temperature, pH and PCO2 in the form of Kelman 1966 and
/// by 2,3-DPG after Siggaard-Andersen 1984.
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

    // S = u / (u + Half) with u = (P³ + Linear P)·exp(C(z)); without C this is Severinghaus 1979, equation 1, which misses his
    // table by up to 0.55 % saturation. C is a polynomial in z = (P² − 40²)/(P² + 40²), which stays between −1 and 1, so the
    // correction fades to a constant at both ends. It was fitted by least squares in saturation to every second point of the
    // table (26 of 51); the other points are held out and checked in the reference rows.
    private const double Linear = 150;
    private const double Half = 23400;
    private const double CentreSquared = 1600;
    private const double C0 = -0.0173;
    private const double C1 = -0.002;
    private const double C2 = 0.5301;
    private const double C3 = 0.464;
    private const double C4 = -1.2602;
    private const double C5 = -1.2321;
    private const int MostNewtonSteps = 12;

    private const double Ln10 = 2.302585092994045684;

    /// <summary>Where the curve and its shifts come from.</summary>
    public static IReadOnlyList<Source> Sources { get; } =
    [
        new("Severinghaus 1979, J Appl Physiol 46:599, equation 1", Certainty.Seen),
        new("correction of that equation fitted to every second point of its table 1 (docs/models/blood.md)", Certainty.Derived),
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
        double odds = Odds(virtualPo2, out _);
        return odds / (odds + Half);
    }

    /// <summary>Slope of the standard curve, 1/mmHg, unchecked.</summary>
    internal static double StandardSlope(double virtualPo2)
    {
        double odds = Odds(virtualPo2, out double slope);
        double below = odds + Half;
        return Half * slope / (below * below);
    }

    /// <summary>
    /// Tension on the standard curve, unchecked. Without the correction P³ + 150 P = 2A with A = 11700 S/(1 − S) has one real
    /// root (Cardano), P = q − 50/q with q³ = A + √(50³ + A²). Newton's steps from there are taken in ln P, where the odds rise
    /// at least in proportion to P, so they neither stall nor leave the positive side.
    /// </summary>
    internal static double StandardPo2(double saturation)
    {
        if (saturation <= 0)
        {
            return 0;
        }

        const double third = Linear / 3;
        double target = Half * saturation / (1 - saturation);
        double q = Math.Cbrt((0.5 * target) + Math.Sqrt((third * third * third) + (0.25 * target * target)));
        double p = Math.Max(q - (third / q), target / (2 * Linear));
        for (int i = 0; i < MostNewtonSteps; i++)
        {
            double odds = Odds(p, out double slope);
            double step = Math.Log(odds / target) * odds / (p * slope);
            p *= Math.Exp(-step);
            if (Math.Abs(step) < 1e-15)
            {
                break;
            }
        }

        return p;
    }

    /// <summary>(P³ + 150 P)·exp(C) and its derivative by P.</summary>
    private static double Odds(double p, out double slope)
    {
        double square = p * p;
        double below = square + CentreSquared;
        double z = (square - CentreSquared) / below;
        double correction = C0 + (z * (C1 + (z * (C2 + (z * (C3 + (z * (C4 + (z * C5)))))))));
        double correctionSlope = C1 + (z * ((2 * C2) + (z * ((3 * C3) + (z * ((4 * C4) + (z * 5 * C5)))))));
        double factor = Math.Exp(correction);
        double cubic = p * (square + Linear);
        double zSlope = 4 * CentreSquared * p / (below * below);
        slope = factor * ((3 * square) + Linear + (cubic * correctionSlope * zSlope));
        return cubic * factor;
    }
}
