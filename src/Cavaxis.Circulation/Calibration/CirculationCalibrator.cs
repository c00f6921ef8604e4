using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Circulation.Solver;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Calibration;

/// <summary>Finds the numbers of a patient from what is read at the bedside, with their spread (docs/models/calibration.md).</summary>
public static class CirculationCalibrator
{
    // Looser than for results that people see: the error stays below a hundredth of the spread of any reading.
    private const double SearchBound = 2e-4;

    private static readonly Tolerance SearchTolerance = new(1e-4);

    /// <summary>Fits one patient.</summary>
    /// <param name="prior">The patient before the readings: configuration, ports, sweep, ventilation and prior values.</param>
    /// <param name="observations">At least one reading.</param>
    /// <param name="options">How; null for the usual way.</param>
    /// <param name="cancellation">Stops between rows.</param>
    /// <returns>The fit, or the finding that there is none.</returns>
    /// <exception cref="InputFaultException">No reading, a reading that this patient cannot give, or a parameter that cannot be fitted.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static CalibrationResult Fit(
        CirculationParameters prior,
        IReadOnlyList<BedsideObservation> observations,
        CalibrationOptions? options = null,
        CancellationToken cancellation = default) => FitMany([(prior, observations)], options, cancellation)[0];

    /// <summary>Fits many patients side by side; each result is that of the patient alone.</summary>
    /// <param name="patients">Each patient before the readings, with the readings.</param>
    /// <param name="options">How; null for the usual way.</param>
    /// <param name="cancellation">Stops between rows.</param>
    /// <returns>One result for each, in order.</returns>
    /// <exception cref="InputFaultException">As for one.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static IReadOnlyList<CalibrationResult> FitMany(
        IReadOnlyList<(CirculationParameters Prior, IReadOnlyList<BedsideObservation> Observations)> patients,
        CalibrationOptions? options = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(patients);
        CalibrationOptions chosen = options ?? CalibrationOptions.Usual;
        Require.InRange(chosen.MostRounds, 1, 100, "mostRounds", "Allow at least one round.");
        Require.InRange(chosen.EnsembleSize, 0, 100_000, "ensembleSize", "Give the number of members.");
        List<(SearchSpace Space, ReadingSet Readings, CalibrationSearch Search)> all = [];
        foreach ((CirculationParameters prior, IReadOnlyList<BedsideObservation> observations) in patients)
        {
            ArgumentNullException.ThrowIfNull(prior);
            ArgumentNullException.ThrowIfNull(observations);
            ReadingSet readings = new(prior, observations);
            SearchSpace space = new(prior, observations, chosen);
            all.Add((space, readings, new CalibrationSearch(space, readings, chosen)));
        }

        Drive([.. all.Select(static a => a.Search.Run().GetEnumerator())], cancellation);

        // What people see is settled as everything else that people see.
        IReadOnlyList<SettledState> best = CirculationSimulator.Settle(
            [.. all.Select(static a => a.Search.Best.Patient)],
            [.. all.Select(static a => a.Search.Best.Settled ? a.Search.Best.State!.State.ToArray() : null)],
            Tolerance.Usual,
            RowSettler<EightLanes>.UsualBound,
            cancellation);
        return [.. all.Select((a, i) => CalibrationReport.Of(a.Space, a.Readings, a.Search, best[i], chosen))];
    }

    /// <summary>Settles what the searches ask for, all together, until none asks any more.</summary>
    private static void Drive(IEnumerator<IReadOnlyList<Trial>>[] searches, CancellationToken cancellation)
    {
        List<IEnumerator<IReadOnlyList<Trial>>> running = [.. searches];
        while (true)
        {
            running.RemoveAll(static search => !search.MoveNext());
            Trial[] asked = [.. running.SelectMany(static search => search.Current)];
            if (running.Count == 0)
            {
                return;
            }

            IReadOnlyList<SettledState> settled = CirculationSimulator.Settle(
                [.. asked.Select(static t => t.Patient)], [.. asked.Select(static t => t.Start)], SearchTolerance, SearchBound, cancellation);
            for (int i = 0; i < asked.Length; i++)
            {
                asked[i].Take(settled[i]);
            }
        }
    }
}
