using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Solver;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Simulation;

/// <summary>Computes settled circulations, one patient or many.</summary>
public static class CirculationSimulator
{
    private const double ComparisonTolerance = 1e-4;
    private const double ComparisonBound = 5e-4;

    /// <summary>Runs one patient until a breath repeats the one before.</summary>
    /// <param name="parameters">The numbers.</param>
    /// <returns>The settled breath, or the finding that there is none.</returns>
    public static SettledState Settle(CirculationParameters parameters)
    {
        ArgumentNullException.ThrowIfNull(parameters);
        return Guarded<OneLane>([parameters], [InitialState.Of(parameters)], Tolerance.Usual, RowSettler<OneLane>.UsualBound)[0];
    }

    /// <summary>Runs many patients, eight side by side and the rows over the cores. Each result is that of the patient alone.</summary>
    /// <param name="patients">The numbers of each.</param>
    /// <param name="cancellation">Stops between rows.</param>
    /// <returns>One result for each, in order.</returns>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static IReadOnlyList<SettledState> Settle(IReadOnlyList<CirculationParameters> patients, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(patients);
        return Settle(patients, null, Tolerance.Usual, RowSettler<EightLanes>.UsualBound, cancellation);
    }

    /// <summary>The same from given states.</summary>
    /// <param name="patients">The numbers of each.</param>
    /// <param name="starts">State of each to start from, null for a plausible one; null altogether for all plausible.</param>
    /// <param name="tolerance">Error allowed in a step.</param>
    /// <param name="bound">Largest change in a breath, in usual sizes, of a settled circulation.</param>
    /// <param name="cancellation">Stops between rows.</param>
    /// <returns>One result for each, in order.</returns>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    internal static IReadOnlyList<SettledState> Settle(
        IReadOnlyList<CirculationParameters> patients, IReadOnlyList<double[]?>? starts, Tolerance tolerance, double bound, CancellationToken cancellation)
    {
        SettledState[] results = new SettledState[patients.Count];
        int width = EightLanes.Count;
        int rows = (patients.Count + width - 1) / width;
        Parallel.For(0, rows, new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = Environment.ProcessorCount }, row =>
        {
            int first = row * width;
            int count = Math.Min(width, patients.Count - first);

            // The last row is filled up with its first patient; each lane keeps its own step, so company changes nothing.
            CirculationParameters[] set = [.. Enumerable.Range(0, width).Select(i => patients[first + (i < count ? i : 0)])];
            double[][] from = [.. Enumerable.Range(0, width).Select(i => starts?[first + (i < count ? i : 0)] ?? InitialState.Of(set[i]))];
            SettledState[] settled = Guarded<EightLanes>(set, from, tolerance, bound);
            Array.Copy(settled, 0, results, first, count);
        });
        return results;
    }

    /// <summary>
    /// Goes on from a settled state with other numbers from time zero on: a drug, a clamp, a new pump flow. A difference of blood volume is
    /// given to or taken from the veins at once, as blood with the gas contents that are there.
    /// </summary>
    /// <param name="start">A settled state.</param>
    /// <param name="changed">Numbers from time zero on, of the same body mass.</param>
    /// <param name="seconds">Length, up to an hour.</param>
    /// <param name="spacingS">Time between samples, s.</param>
    /// <returns>Every signal over time, and the oxygen budget of the stretch.</returns>
    /// <exception cref="InputFaultException">Another body mass, a length or spacing out of range, or more blood taken than the veins hold.</exception>
    /// <exception cref="NotSettledException">The start has not settled, or the equations cannot be solved with these numbers.</exception>
    public static Trace Run(SettledState start, CirculationParameters changed, double seconds, double spacingS)
    {
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(changed);
        Require.InRange(changed.MassKg, start.Parameters.MassKg, start.Parameters.MassKg, "massKg", "Change numbers of one patient, not the patient.");
        try
        {
            return TimeRun.Run(start, changed, seconds, spacingS);
        }
        catch (StepTooSmallException fault)
        {
            throw new NotSettledException(fault.Message);
        }
    }

    /// <summary>
    /// The same for comparing many patients: steps may err ten times more, and a patient counts as settled at a change of 0.05 % in a breath
    /// instead of 0.005 %. Contents are then within about half a percent of where they end.
    /// </summary>
    /// <param name="patients">The numbers of each.</param>
    /// <param name="cancellation">Stops between rows.</param>
    /// <returns>One result for each, in order.</returns>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static IReadOnlyList<SettledState> SettleForComparison(
        IReadOnlyList<CirculationParameters> patients, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(patients);
        return Settle(patients, null, new Tolerance(ComparisonTolerance), ComparisonBound, cancellation);
    }

    /// <summary>The same going on from states of patients who differ little: a cannula moved, a flow changed. Comes to rest sooner.</summary>
    /// <param name="patients">The numbers of each.</param>
    /// <param name="from">One state for each patient, of the same body mass; those that have not settled, and null altogether, start anew.</param>
    /// <param name="cancellation">Stops between rows.</param>
    /// <returns>One result for each, in order.</returns>
    /// <exception cref="ArgumentException">There is not one state for each patient.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static IReadOnlyList<SettledState> SettleForComparison(
        IReadOnlyList<CirculationParameters> patients, IReadOnlyList<SettledState>? from, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(patients);
        if (from is not null && from.Count != patients.Count)
        {
            throw new ArgumentException("One state for each patient.", nameof(from));
        }

        double[]?[]? starts = from is null ? null : [.. from.Select(static state => state.Settled ? state.State.ToArray() : null)];
        Tolerance tolerance = new(ComparisonTolerance);

        // One patient alone comes out the same in either way of computing, and sooner without seven companions.
        return patients.Count == 1
            ? Guarded<OneLane>([patients[0]], [starts?[0] ?? InitialState.Of(patients[0])], tolerance, ComparisonBound)
            : Settle(patients, starts, tolerance, ComparisonBound, cancellation);
    }

    private static SettledState[] Guarded<T>(CirculationParameters[] set, double[][] starts, Tolerance tolerance, double bound)
        where T : unmanaged, ILane<T>
    {
        try
        {
            return new RowSettler<T>(set, tolerance, bound).Run(starts);
        }
        catch (StepTooSmallException fault) when (T.Count == 1)
        {
            return [new SettledState(set[0], null, null, null, fault.Message, fault.TimeS) { Moving = "a flow (steps as small as rounding)" }];
        }
        catch (StepTooSmallException)
        {
            // One patient of the row cannot be solved; the others are computed alone.
            return [.. set.Select((p, i) => Guarded<OneLane>([p], [starts[i]], tolerance, bound)[0])];
        }
    }
}
