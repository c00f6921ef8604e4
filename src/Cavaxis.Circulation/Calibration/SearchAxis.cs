using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Circulation.Calibration;

/// <summary>One direction of the search: a parameter with its followers, in prior standard deviations from its prior value.</summary>
/// <param name="Spread">Scale, spread and followers.</param>
/// <param name="Middle">Prior value.</param>
/// <param name="IsReading">True where the prior is itself a reading that was set directly.</param>
internal sealed record SearchAxis(PriorSpread Spread, double Middle, bool IsReading)
{
    // A share of nothing or of all has no logit; beyond these bounds no reading tells a difference.
    private const double LeastShare = 0.005;

    /// <summary>The parameter.</summary>
    public CirculationParameter Parameter => Spread.Parameter;

    /// <summary>The value at a place.</summary>
    /// <param name="place">Prior standard deviations from the prior value.</param>
    /// <returns>Value in the unit of the table.</returns>
    public double ValueAt(double place)
    {
        if (Spread.Scale == ScaleKind.Logarithm)
        {
            return Middle * Math.Exp(Spread.Sd * place);
        }

        double share = Math.Clamp(Middle, LeastShare, 1 - LeastShare);
        double odds = share / (1 - share) * Math.Exp(Spread.Sd * place);
        return odds / (1 + odds);
    }

    /// <summary>The place of a value.</summary>
    /// <param name="value">Value in the unit of the table.</param>
    /// <returns>Prior standard deviations from the prior value.</returns>
    public double PlaceOf(double value)
    {
        if (Spread.Scale == ScaleKind.Logarithm)
        {
            return Math.Log(value / Middle) / Spread.Sd;
        }

        static double Logit(double x)
        {
            double share = Math.Clamp(x, LeastShare, 1 - LeastShare);
            return Math.Log(share / (1 - share));
        }

        return (Logit(value) - Logit(Middle)) / Spread.Sd;
    }
}
