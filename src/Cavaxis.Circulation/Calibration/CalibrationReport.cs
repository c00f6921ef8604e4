using Cavaxis.Circulation.Simulation;
using Cavaxis.Quantities;
using MathNet.Numerics.Distributions;

namespace Cavaxis.Circulation.Calibration;

/// <summary>Puts a finished search into numbers and words.</summary>
internal static class CalibrationReport
{
    /// <summary>A parameter counts as determined where the readings take away at least this share of its prior variance.</summary>
    public const double DeterminedShare = 0.5;

    /// <summary>Describes.</summary>
    /// <param name="space">What was searched.</param>
    /// <param name="readings">The readings.</param>
    /// <param name="search">The finished search.</param>
    /// <param name="state">The best patient, settled.</param>
    /// <param name="options">Ensemble and seed.</param>
    /// <returns>The result.</returns>
    public static CalibrationResult Of(
        SearchSpace space, ReadingSet readings, CalibrationSearch search, SettledState state, CalibrationOptions options)
    {
        string reason = search.Reason.Length > 0 ? search.Reason : state.Reason;
        if (reason.Length > 0)
        {
            return Nothing(reason, search.Rounds);
        }

        LaplaceBelief belief = search.Belief!;
        double[] residuals = readings.Residuals(state.RequireSummary());
        double misfit = residuals.Sum(static r => r * r) + search.Best.Place.Sum(static u => u * u);
        int freedom = readings.Fitted.Count;
        FittedParameter[] parameters = [.. space.Axes.Select((axis, i) => Describe(axis, search.Best.Place[i], belief, i)).Where((_, i) => !space.Axes[i].IsReading)];
        double probability = freedom == 0 ? 1 : 1 - ChiSquared.CDF(freedom, misfit);
        return new CalibrationResult
        {
            Reason = string.Empty,
            Best = search.Best.Patient,
            BestState = state,
            Parameters = parameters,
            Observations = [.. readings.All.Select(r => Describe(r, state))],
            NotDetermined = CalibrationWords.NotDetermined(space, parameters, belief, search.Blind),
            Warnings = CalibrationWords.Warnings(space, readings, residuals, belief, probability, search.Converged, state),
            ChiSquare = residuals.Sum(static r => r * r),
            MisfitProbability = probability,
            Ensemble = [.. Enumerable.Range(0, options.EnsembleSize).Select(m => space.At(belief.Draw(m, options.Seed)))],
            Converged = search.Converged,
            Rounds = search.Rounds,
        };
    }

    private static CalibrationResult Nothing(string reason, int rounds) => new()
    {
        Reason = reason,
        Best = null,
        BestState = null,
        Parameters = [],
        Observations = [],
        NotDetermined = [],
        Warnings = [],
        ChiSquare = 0,
        MisfitProbability = 0,
        Ensemble = [],
        Converged = false,
        Rounds = rounds,
    };

    private static FittedParameter Describe(SearchAxis axis, double best, LaplaceBelief belief, int index)
    {
        double determined = 1 - belief.Covariance[index, index];
        return new FittedParameter(
            axis.Parameter, Spread(axis, 0, 0, 1), Spread(axis, best, belief.Best[index], belief.Sd(index)), determined, determined > DeterminedShare);
    }

    /// <summary>The interval is carried from the working scale; the standard deviation is that of a normal of the same interval.</summary>
    private static Estimate Spread(SearchAxis axis, double best, double middle, double sd)
    {
        double low = axis.ValueAt(Math.Min(best, middle - (Estimate.NormalQuantile95 * sd)));
        double high = axis.ValueAt(Math.Max(best, middle + (Estimate.NormalQuantile95 * sd)));
        return Estimate.WithInterval(axis.ValueAt(best), (high - low) / (2 * Estimate.NormalQuantile95), low, high, Origin.Estimated);
    }

    private static FittedObservation Describe(BedsideObservation reading, SettledState state)
    {
        double fitted = state.RequireSummary()[ObservationTable.Of(reading.Kind).Quantity];
        return new FittedObservation(
            reading.Kind,
            Estimate.Normal(reading.Value, reading.Sd, Origin.Measured),
            Estimate.Normal(fitted, 0, Origin.Calculated),
            -ReadingSet.Residual(reading, fitted),
            SearchSpace.DirectTarget(state.Parameters, reading.Kind) is not null);
    }
}
