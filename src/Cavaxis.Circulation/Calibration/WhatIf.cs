using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Calibration;

/// <summary>What a change would do, computed in every member of an ensemble before and after it.</summary>
public static class WhatIf
{
    /// <summary>Computes the effect of changes on a calibrated patient.</summary>
    /// <param name="calibration">A calibration with an ensemble.</param>
    /// <param name="changes">The changes, made one after the other.</param>
    /// <param name="cancellation">Stops between rows.</param>
    /// <returns>Bands of every quantity before and after and of the difference.</returns>
    /// <exception cref="InputFaultException">The calibration found no fit or has fewer than two members.</exception>
    public static WhatIfResult Compute(CalibrationResult calibration, IReadOnlyList<ParameterChange> changes, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(calibration);
        return Compute(calibration.Ensemble, changes, cancellation);
    }

    /// <summary>Computes the effect of changes on any ensemble.</summary>
    /// <param name="ensemble">At least two patients.</param>
    /// <param name="changes">The changes, made one after the other.</param>
    /// <param name="cancellation">Stops between rows.</param>
    /// <returns>Bands of every quantity before and after and of the difference.</returns>
    /// <exception cref="InputFaultException">Fewer than two members.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static WhatIfResult Compute(
        IReadOnlyList<CirculationParameters> ensemble, IReadOnlyList<ParameterChange> changes, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(ensemble);
        ArgumentNullException.ThrowIfNull(changes);
        Require.InRange(ensemble.Count, 2, 100_000, "ensemble", "Calibrate with an ensemble first, and see why there is none.");
        CirculationParameters?[] changed = new CirculationParameters?[ensemble.Count];
        List<(LeftOutStage Stage, string What)> reasons = [];
        for (int i = 0; i < ensemble.Count; i++)
        {
            try
            {
                changed[i] = changes.Aggregate(ensemble[i], static (patient, change) => change.Apply(patient));
            }
            catch (InputFaultException fault)
            {
                reasons.Add((LeftOutStage.OutOfRange, fault.Faults[0].Field));
            }
        }

        int[] kept = [.. Enumerable.Range(0, ensemble.Count).Where(i => changed[i] is not null)];
        IReadOnlyList<SettledState> all = CirculationSimulator.Settle(
            [.. kept.Select(i => ensemble[i]), .. kept.Select(i => changed[i]!)], cancellation);
        (int before, int after) = (0, 0);
        List<(CirculationSummary Before, CirculationSummary After)> pairs = [];
        for (int i = 0; i < kept.Length; i++)
        {
            (SettledState first, SettledState second) = (all[i], all[kept.Length + i]);
            if (first.Settled && second.Settled)
            {
                pairs.Add((first.RequireSummary(), second.RequireSummary()));
                continue;
            }

            before += first.Settled ? 0 : 1;
            after += first.Settled ? 1 : 0;
            reasons.Add(first.Settled ? (LeftOutStage.NotSettledAfter, second.Moving) : (LeftOutStage.NotSettledBefore, first.Moving));
        }

        WhatIfResult result = new([], ensemble.Count, before, after, ensemble.Count - kept.Length, Grouped(reasons));
        return result.Suffices ? result with { Quantities = Bands(pairs) } : result;
    }

    private static LeftOut[] Grouped(List<(LeftOutStage Stage, string What)> reasons) =>
    [
        .. reasons.GroupBy(static r => r)
            .Select(static g => new LeftOut(g.Key.Stage, g.Count(), g.Key.What))
            .OrderByDescending(static l => l.Members).ThenBy(static l => l.Stage).ThenBy(static l => l.What, StringComparer.Ordinal),
    ];

    private static QuantityChange[] Bands(List<(CirculationSummary Before, CirculationSummary After)> pairs)
    {
        // A band over the members that happen to have a value would be one over a biased choice of them.
        Estimate? Band(Func<(CirculationSummary Before, CirculationSummary After), double> of)
        {
            double[] values = [.. pairs.Select(of)];
            return Array.TrueForAll(values, double.IsFinite) ? Estimate.FromSamples(values, Origin.Calculated) : null;
        }

        return [.. Enum.GetValues<CirculationQuantity>().Select(q => new QuantityChange(
            q, Band(p => p.Before[q]), Band(p => p.After[q]), Band(p => p.After[q] - p.Before[q])))];
    }
}
