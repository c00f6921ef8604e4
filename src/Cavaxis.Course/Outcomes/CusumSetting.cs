using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Outcomes;

/// <summary>What a cumulative-sum chart looks for and when it signals.</summary>
public sealed record CusumSetting
{
    /// <summary>A setting.</summary>
    /// <param name="oddsRatio">Change of the odds of the event that is looked for, 0.1 to 10 and not 1: 2 for doubled, 0.5 for halved.</param>
    /// <param name="limit">Control limit h, 0.5 to 20.</param>
    /// <param name="source">Where the limit comes from.</param>
    /// <exception cref="InputFaultException">A number is out of range, or the odds ratio is 1.</exception>
    public CusumSetting(double oddsRatio, double limit, Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        OddsRatio = Require.InRange(oddsRatio, 0.1, 10, nameof(oddsRatio), "Give the change of the odds to look for, 2 for doubled.");
        Limit = Require.InRange(limit, 0.5, 20, nameof(limit), "Give the control limit of the log-likelihood ratio.");
        if (Math.Abs(Math.Log(oddsRatio)) < 0.01)
        {
            throw new InputFaultException(new InputFault(FaultCode.OutOfRange, nameof(oddsRatio), "1", "an odds ratio that differs from 1", "Give the change of the odds to look for."));
        }

        Source = source;
    }

    /// <summary>Change of the odds of the event that is looked for.</summary>
    public double OddsRatio { get; }

    /// <summary>Control limit h.</summary>
    public double Limit { get; }

    /// <summary>Where the limit comes from.</summary>
    public Source Source { get; }

    /// <summary>Doubled odds of the event.</summary>
    public static CusumSetting Worse { get; } = new(2, 4.5, Steiner);

    /// <summary>Halved odds of the event.</summary>
    public static CusumSetting Better { get; } = new(0.5, 4, Steiner);

    private static Source Steiner => new("Steiner et al. 2000, Biostatistics 1:441: limits 4.5 and 4.0 in their example, as in the examples of a public package", Certainty.SeenSecondHand);

    /// <summary>
    /// Weight of one case: log of the likelihood under the changed odds over that under the expected risk, y·ln R − ln(1 − p + R·p).
    /// </summary>
    /// <param name="risk">Expected risk of the event, 0 to 1, ends left out.</param>
    /// <param name="happened">True when it happened.</param>
    /// <returns>The weight, positive when the case speaks for the change.</returns>
    /// <exception cref="InputFaultException">The risk is out of range.</exception>
    public double Weight(double risk, bool happened)
    {
        Require.InRange(risk, 1e-6, 1 - 1e-6, nameof(risk), "Give the expected risk as a fraction between 0 and 1.");
        return (happened ? Math.Log(OddsRatio) : 0) - Math.Log(1 - risk + (OddsRatio * risk));
    }
}
