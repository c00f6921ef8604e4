using Cavaxis.Circulation.Parameters;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Calibration;

/// <summary>
/// The parameters that are searched, each in prior standard deviations from its prior value, so that the belief before the readings
/// is standard normal in every direction.
/// </summary>
internal sealed class SearchSpace
{
    private readonly CirculationParameters prior;

    /// <summary>Prepares.</summary>
    /// <param name="prior">The patient before the readings.</param>
    /// <param name="readings">The readings; those that are set directly move the prior.</param>
    /// <param name="options">What is fitted.</param>
    public SearchSpace(CirculationParameters prior, IReadOnlyList<BedsideObservation> readings, CalibrationOptions options)
    {
        IReadOnlyList<PriorSpread> spreads = options.Fitted is { } chosen
            ? [.. chosen.Distinct().Select(PriorTable.Of)]
            : PriorTable.For(prior, options.HaemoglobinUnknown);
        List<SearchAxis> direct = [];
        foreach (IGrouping<ObservationKind, BedsideObservation> same in readings.GroupBy(static r => r.Kind))
        {
            if (DirectTarget(prior, same.Key) is not { } target)
            {
                continue;
            }

            // Several readings of the same number: their weighted mean.
            double weight = same.Sum(static r => 1 / (r.Sd * r.Sd));
            double value = same.Sum(static r => r.Value / (r.Sd * r.Sd)) / weight;
            prior = prior.With(target, value);
            if (target != HeartRatePerMin)
            {
                PriorSpread spread = new(
                    target, ScaleKind.Logarithm, Math.Sqrt(1 / weight) / value, [], ObservationTable.Of(same.Key).Words, ObservationTable.Of(same.Key).Source);
                direct.Add(new SearchAxis(spread, value, true));
            }
        }

        this.prior = prior;
        Axes = [.. spreads.Select(s => new SearchAxis(s, prior[s.Parameter], false)), .. direct];
    }

    /// <summary>The directions.</summary>
    public IReadOnlyList<SearchAxis> Axes { get; }

    /// <summary>Number of directions.</summary>
    public int Count => Axes.Count;

    /// <summary>The parameter that a reading sets directly; null for readings that are fitted.</summary>
    /// <param name="patient">Where flow is kept the flow is set, where speed is kept the speed.</param>
    /// <param name="kind">The reading.</param>
    /// <returns>The parameter or null.</returns>
    public static CirculationParameter? DirectTarget(CirculationParameters patient, ObservationKind kind) => kind switch
    {
        ObservationKind.HeartRatePerMin => HeartRatePerMin,
        ObservationKind.PumpFlowLPerMin when patient[FlowControlPerS] > 0 => TargetFlowLPerMin,
        ObservationKind.PumpSpeedRatio when !(patient[FlowControlPerS] > 0) => PumpSpeedRatio,
        _ => null,
    };

    /// <summary>The patient at a place; values beyond the model's range stop at its bounds.</summary>
    /// <param name="place">Prior standard deviations in each direction.</param>
    /// <returns>The patient.</returns>
    public CirculationParameters At(ReadOnlySpan<double> place)
    {
        CirculationParameters patient = prior;
        for (int i = 0; i < Axes.Count; i++)
        {
            double value = Axes[i].ValueAt(place[i]);
            patient = patient.WithNearest(Axes[i].Parameter, value);
            foreach (CirculationParameter follower in Axes[i].Spread.Followers)
            {
                patient = patient.WithNearest(follower, prior[follower] * value / Axes[i].Middle);
            }
        }

        return patient;
    }
}
