namespace Cavaxis.Devices.Hydraulics;

/// <summary>
/// Darcy friction factor of a straight tube. Two readings of the critical zone are offered: the quiet inlet of the textbook, and
/// the disturbed inlet of a cannula with holes, steps and connectors. Both have the same laminar and turbulent branches.
/// Derivation and sources in <c>docs/models/devices.md</c>.
/// </summary>
public static class TubeFriction
{
    /// <summary>Reynolds number up to which a tube with a quiet inlet is laminar.</summary>
    public const double LaminarUpTo = 2000;

    /// <summary>Reynolds number from which a tube is turbulent.</summary>
    public const double TurbulentFrom = 4000;

    // Below this Reynolds number the factor of Blasius exceeds that of Prandtl and von Kármán for a smooth wall, so that the
    // implicit equation need not be solved (the two meet near 8e4).
    private const double BlasiusAloneBelow = 6e4;
    private const double ColebrookStillAboveBlasiusTo = 4500;

    // Lowest Reynolds number at which the quiet inlet was found above the carried Blasius slope is 3949.9, at zero roughness.
    private const double QuietMayBeAboveFrom = 3900;

    /// <summary>Friction factor with a quiet inlet: exact laminar branch to 2000, turbulent from 4000, and between the two a monotone
    /// cubic of ln(f Re²) against ln Re, so that the pressure drop rises with flow throughout.</summary>
    /// <param name="reynolds">Reynolds number on the (hydraulic) diameter, positive.</param>
    /// <param name="relativeRoughness">Roughness height over diameter, 0 to 0.05.</param>
    /// <returns>Darcy friction factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The Reynolds number is not positive and finite, or the roughness is outside its range.</exception>
    public static double DarcyFactor(double reynolds, double relativeRoughness = 0)
    {
        Check(reynolds, relativeRoughness);
        if (reynolds <= LaminarUpTo)
        {
            return Laminar(reynolds);
        }

        return reynolds >= TurbulentFrom
            ? TurbulentUnchecked(reynolds, relativeRoughness)
            : Transition(reynolds, relativeRoughness);
    }

    /// <summary>
    /// Friction factor with a disturbed inlet: the larger of the laminar and the turbulent factor, the turbulent one carried below
    /// 4000 with the slope of Blasius and never below the quiet inlet. It never rises with the Reynolds number, so a more viscous liquid never loses less; between
    /// about 1200 and 4000 it lies above the quiet inlet (by up to a half at 2000), where the true factor may be either.
    /// </summary>
    /// <param name="reynolds">Reynolds number on the (hydraulic) diameter, positive.</param>
    /// <param name="relativeRoughness">Roughness height over diameter, 0 to 0.05.</param>
    /// <returns>Darcy friction factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The Reynolds number is not positive and finite, or the roughness is outside its range.</exception>
    public static double DisturbedInlet(double reynolds, double relativeRoughness = 0)
    {
        Check(reynolds, relativeRoughness);
        return DisturbedInletUnchecked(reynolds, relativeRoughness);
    }

    /// <summary>Laminar factor of Hagen and Poiseuille in a round tube, 64/Re.</summary>
    /// <param name="reynolds">Reynolds number, positive.</param>
    /// <returns>Darcy friction factor.</returns>
    public static double Laminar(double reynolds) => 64 / reynolds;

    /// <summary>Factor of Blasius (1913) for a smooth wall, 0.3164 Re^(-1/4), good from about 4000 to 100 000.</summary>
    /// <param name="reynolds">Reynolds number, positive.</param>
    /// <returns>Darcy friction factor.</returns>
    public static double Blasius(double reynolds) => 0.3164 / Math.Sqrt(Math.Sqrt(reynolds));

    /// <summary>Factor of Colebrook (1939); for zero roughness that of Prandtl and von Kármán for a smooth wall.</summary>
    /// <param name="reynolds">Reynolds number, at least 1000.</param>
    /// <param name="relativeRoughness">Roughness height over diameter.</param>
    /// <returns>Darcy friction factor, solved to rounding.</returns>
    public static double Colebrook(double reynolds, double relativeRoughness)
    {
        // x = f^(-1/2) solves x + 2 log10(e/3.7 + 2.51 x / Re) = 0; Newton from Haaland's explicit value converges in a few steps.
        double wall = relativeRoughness / 3.7;
        double slope = 2.51 / reynolds;
        double x = -1.8 * Math.Log10(Math.Pow(wall, 1.11) + (6.9 / reynolds));
        for (int i = 0; i < 8; i++)
        {
            double inside = wall + (slope * x);
            double step = (x + (2 * Math.Log10(inside))) / (1 + (2 / Math.Log(10) * slope / inside));
            x -= step;
            if (Math.Abs(step) <= 1e-15 * x)
            {
                break;
            }
        }

        return 1 / (x * x);
    }

    /// <summary>Turbulent factor: the larger of Blasius and Colebrook.</summary>
    /// <param name="reynolds">Reynolds number, at least 4000.</param>
    /// <param name="relativeRoughness">Roughness height over diameter, 0 to 0.05.</param>
    /// <returns>Darcy friction factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The Reynolds number is below 4000 or the roughness is outside its range.</exception>
    public static double Turbulent(double reynolds, double relativeRoughness = 0)
    {
        Check(reynolds, relativeRoughness);
        return reynolds >= TurbulentFrom
            ? TurbulentUnchecked(reynolds, relativeRoughness)
            : throw new ArgumentOutOfRangeException(nameof(reynolds), reynolds, "The turbulent branch begins at 4000.");
    }

    internal static double DisturbedInletUnchecked(double reynolds, double relativeRoughness = 0)
    {
        if (reynolds >= TurbulentFrom)
        {
            return TurbulentUnchecked(reynolds, relativeRoughness);
        }

        double carried = Math.Max(
            Laminar(reynolds),
            TurbulentUnchecked(TurbulentFrom, relativeRoughness) * Math.Sqrt(Math.Sqrt(TurbulentFrom / reynolds)));

        // A smooth wall falls a little faster than Blasius at 4000, so that the quiet inlet, which keeps that slope, lies up to
        // 0.015 % above the carried factor just below 4000.
        return reynolds > QuietMayBeAboveFrom ? Math.Max(carried, Transition(reynolds, relativeRoughness)) : carried;
    }

    private static double TurbulentUnchecked(double reynolds, double relativeRoughness) =>
        relativeRoughness == 0 && reynolds is > ColebrookStillAboveBlasiusTo and < BlasiusAloneBelow
            ? Blasius(reynolds)
            : Math.Max(Blasius(reynolds), relativeRoughness == 0 && reynolds == TurbulentFrom
                ? SmoothAtTurbulentFrom
                : Colebrook(reynolds, relativeRoughness));

    private static readonly double SmoothAtTurbulentFrom = Colebrook(TurbulentFrom, 0);

    private static double Transition(double reynolds, double relativeRoughness)
    {
        // Cubic Hermite of G = ln(f Re²): slope 1 at the laminar end, the slope of the turbulent branch at the other. Both are less
        // than three times the chord, so the cubic is monotone (Fritsch and Carlson 1980).
        double low = Math.Log(64 * LaminarUpTo);
        double factor = TurbulentUnchecked(TurbulentFrom, relativeRoughness);
        double high = Math.Log(factor * TurbulentFrom * TurbulentFrom);
        double width = Math.Log(TurbulentFrom / LaminarUpTo);
        double inside = (relativeRoughness / 3.7) + (2.51 / (TurbulentFrom * Math.Sqrt(factor)));
        double share = 2 / Math.Log(10) * 2.51 / (TurbulentFrom * inside);
        double endSlope = 2 - (2 * share / (1 + share));
        double t = Math.Log(reynolds / LaminarUpTo) / width;
        double g = (((1 + (2 * t)) * (1 - t) * (1 - t)) * low)
            + (t * (1 - t) * (1 - t) * width)
            + (t * t * (3 - (2 * t)) * high)
            + (t * t * (t - 1) * width * endSlope);
        return Math.Exp(g) / (reynolds * reynolds);
    }

    private static void Check(double reynolds, double relativeRoughness)
    {
        if (!(reynolds > 0) || !double.IsFinite(reynolds))
        {
            throw new ArgumentOutOfRangeException(nameof(reynolds), reynolds, "A Reynolds number is positive and finite.");
        }

        if (!(relativeRoughness >= 0 && relativeRoughness <= 0.05))
        {
            throw new ArgumentOutOfRangeException(nameof(relativeRoughness), relativeRoughness, "Relative roughness lies between 0 and 0.05.");
        }
    }
}
