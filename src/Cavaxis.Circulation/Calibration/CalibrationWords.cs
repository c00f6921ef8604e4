using System.Globalization;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;

namespace Cavaxis.Circulation.Calibration;

/// <summary>Says in sentences what a calibration leaves open and what does not fit together.</summary>
internal static class CalibrationWords
{
    private const double UnlikelyMisfit = 0.01;
    private const double FarReading = 3;
    private const double FarParameter = 2.5;
    private const double Tied = 0.75;

    /// <summary>What the readings do not determine.</summary>
    /// <param name="space">What was searched.</param>
    /// <param name="parameters">Beliefs before and after.</param>
    /// <param name="belief">Belief after the readings.</param>
    /// <param name="blind">Directions without slopes.</param>
    /// <returns>Sentences.</returns>
    public static IReadOnlyList<string> NotDetermined(
        SearchSpace space, IReadOnlyList<FittedParameter> parameters, LaplaceBelief belief, IReadOnlySet<int> blind)
    {
        List<string> sentences = [];
        for (int i = 0; i < parameters.Count; i++)
        {
            FittedParameter p = parameters[i];
            string words = Capital(space.Axes[i].Spread.Words);
            if (blind.Contains(i))
            {
                sentences.Add($"{words}: no neighbouring value settles, so the readings were not asked about it.");
            }
            else if (!p.IsDetermined)
            {
                sentences.Add(string.Create(
                    CultureInfo.InvariantCulture,
                    $"{words}: the readings take away {Math.Max(0, 100 * p.Determined):F0} % of its prior variance; it stays between {p.Posterior.Low:G3} and {p.Posterior.High:G3}{Unit(p)}."));
            }

            for (int j = 0; j < i; j++)
            {
                double tie = belief.Covariance[i, j] / (belief.Sd(i) * belief.Sd(j));
                if (Math.Abs(tie) > Tied)
                {
                    sentences.Add($"{words} and {space.Axes[j].Spread.Words} are known only together: "
                        + (tie > 0 ? "both may be higher or both lower." : "one may be higher if the other is lower."));
                }
            }
        }

        return sentences;
    }

    /// <summary>What contradicts.</summary>
    /// <param name="space">What was searched.</param>
    /// <param name="readings">The readings.</param>
    /// <param name="residuals">Model less reading of the fitted readings, in standard deviations.</param>
    /// <param name="belief">Belief after the readings.</param>
    /// <param name="probability">Chance of a larger misfit.</param>
    /// <param name="converged">Whether the search came to its end.</param>
    /// <param name="state">The best patient, settled.</param>
    /// <returns>Sentences.</returns>
    public static IReadOnlyList<string> Warnings(
        SearchSpace space, ReadingSet readings, double[] residuals, LaplaceBelief belief, double probability, bool converged, SettledState state)
    {
        List<string> sentences = [];
        CultureInfo culture = CultureInfo.InvariantCulture;
        if (!converged)
        {
            sentences.Add("The search used up its rounds before it came to rest; the spreads may be too narrow.");
        }

        if (probability < UnlikelyMisfit)
        {
            sentences.Add(string.Create(culture, $"The readings contradict each other or the model cannot reach them: a misfit this large has a chance of {probability:G2}."));
        }

        for (int k = 0; k < residuals.Length; k++)
        {
            // Residual against the spread that it is expected to have after the fit; equal to that of leaving this reading out and predicting it.
            double against = residuals[k] / Math.Sqrt(belief.ResidualCovariance[k, k]);
            if (Math.Abs(against) > FarReading)
            {
                BedsideObservation r = readings.Fitted[k];
                double fitted = state.RequireSummary()[ObservationTable.Of(r.Kind).Quantity];
                sentences.Add(string.Create(
                    culture,
                    $"The {ObservationTable.Of(r.Kind).Words} of {r.Value:G4} does not go with the other readings and the prior ({Math.Abs(against):F1} standard deviations); the fit gives {fitted:G4}."));
            }
        }

        for (int i = 0; i < space.Count; i++)
        {
            if (Math.Abs(belief.Best[i]) > FarParameter)
            {
                sentences.Add(string.Create(
                    culture,
                    $"The fit needs an unusual value: {space.Axes[i].Spread.Words} {space.Axes[i].ValueAt(belief.Best[i]):G3}, {Math.Abs(belief.Best[i]):F1} prior standard deviations {(belief.Best[i] > 0 ? "above" : "below")} {space.Axes[i].Middle:G3}."));
            }
        }

        CirculationSummary summary = state.RequireSummary();
        foreach (BedsideObservation r in readings.All.Where(r => SearchSpace.DirectTarget(state.Parameters, r.Kind) is not null))
        {
            double reached = summary[ObservationTable.Of(r.Kind).Quantity];
            if (Math.Abs(reached - r.Value) > FarReading * r.Sd)
            {
                sentences.Add(string.Create(culture, $"The {ObservationTable.Of(r.Kind).Words} of {r.Value:G4} is not reached; the model gives {reached:G4}."));
            }
        }

        return sentences;
    }

    private static string Unit(FittedParameter fitted) => ParameterTable.Of(fitted.Parameter).Unit is { Length: > 0 } unit and not "1" ? " " + unit : string.Empty;

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
