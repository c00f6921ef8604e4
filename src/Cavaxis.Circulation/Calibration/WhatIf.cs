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
        CirculationParameters?[] changed = Changed(ensemble, changes);
        int[] kept = [.. Enumerable.Range(0, ensemble.Count).Where(i => changed[i] is not null)];
        IReadOnlyList<SettledState> all = CirculationSimulator.Settle(
            [.. kept.Select(i => ensemble[i]), .. kept.Select(i => changed[i]!)], cancellation);
        SettledState?[] first = new SettledState?[ensemble.Count];
        SettledState?[] second = new SettledState?[ensemble.Count];
        for (int k = 0; k < kept.Length; k++)
        {
            (first[kept[k]], second[kept[k]]) = (all[k], all[kept.Length + k]);
        }

        return Compare(first, second, ensemble, changes);
    }

    /// <summary>The same where the ensemble has been brought to rest already, which takes half of the time.</summary>
    /// <param name="before">The ensemble before the changes, at least two patients, settled or not.</param>
    /// <param name="changes">The changes, made one after the other.</param>
    /// <param name="cancellation">Stops between rows.</param>
    /// <returns>The same bands.</returns>
    /// <exception cref="InputFaultException">Fewer than two members.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static WhatIfResult Compute(
        IReadOnlyList<SettledState> before, IReadOnlyList<ParameterChange> changes, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(changes);
        Require.InRange(before.Count, 2, 100_000, "ensemble", "Calibrate with an ensemble first, and see why there is none.");
        CirculationParameters[] ensemble = [.. before.Select(static s => s.Parameters)];
        if (changes.Count == 0)
        {
            return Compare([.. before], [.. before], ensemble, changes);
        }

        CirculationParameters?[] changed = Changed(ensemble, changes);
        int[] kept = [.. Enumerable.Range(0, ensemble.Length).Where(i => changed[i] is not null)];
        IReadOnlyList<SettledState> settled = CirculationSimulator.Settle([.. kept.Select(i => changed[i]!)], cancellation);
        SettledState?[] after = new SettledState?[ensemble.Length];
        for (int k = 0; k < kept.Length; k++)
        {
            after[kept[k]] = settled[k];
        }

        return Compare([.. before.Select((s, i) => changed[i] is null ? null : s)], after, ensemble, changes);
    }

    private static CirculationParameters?[] Changed(IReadOnlyList<CirculationParameters> ensemble, IReadOnlyList<ParameterChange> changes) =>
        [.. ensemble.Select(member => Try(member, changes).Changed)];

    private static (CirculationParameters? Changed, string Field) Try(CirculationParameters member, IReadOnlyList<ParameterChange> changes)
    {
        try
        {
            return (changes.Aggregate(member, static (patient, change) => change.Apply(patient)), string.Empty);
        }
        catch (InputFaultException fault)
        {
            return (null, fault.Faults[0].Field);
        }
    }

    /// <summary>Bands over the members that settle before and after, and why the others are left out; null stands for a member out of range.</summary>
    private static WhatIfResult Compare(
        SettledState?[] first, SettledState?[] second, IReadOnlyList<CirculationParameters> ensemble, IReadOnlyList<ParameterChange> changes)
    {
        (int before, int after, int outside) = (0, 0, 0);
        List<(LeftOutStage Stage, string What)> reasons = [];
        List<(CirculationSummary Before, CirculationSummary After)> pairs = [];
        for (int i = 0; i < ensemble.Count; i++)
        {
            if (first[i] is not SettledState start || second[i] is not SettledState end)
            {
                outside++;
                reasons.Add((LeftOutStage.OutOfRange, Try(ensemble[i], changes).Field));
            }
            else if (start.Settled && end.Settled)
            {
                pairs.Add((start.RequireSummary(), end.RequireSummary()));
            }
            else
            {
                before += start.Settled ? 0 : 1;
                after += start.Settled ? 1 : 0;
                reasons.Add(start.Settled ? (LeftOutStage.NotSettledAfter, end.Moving) : (LeftOutStage.NotSettledBefore, start.Moving));
            }
        }

        WhatIfResult result = new([], ensemble.Count, before, after, outside, Grouped(reasons));
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
