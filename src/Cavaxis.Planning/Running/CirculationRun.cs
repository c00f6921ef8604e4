using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Running;

/// <summary>Computes the circulation of a case and writes down what it says.</summary>
public static class CirculationRun
{
    private static readonly string[] Limits =
    [
        "One set of numbers is computed. How far this patient may lie from it tells a calibration (`calibrate`, `whatif`).",
        "Waves in the arteries, mixing in the aortic root, clotting, haemolysis, air, drugs and the kidneys are not part of the model.",
    ];

    /// <summary>Computes.</summary>
    /// <param name="file">The case.</param>
    /// <param name="setup">Its numbers.</param>
    /// <param name="question">Changes and length.</param>
    /// <returns>The result; not settled is a result too, without numbers.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">A change or the length is out of range.</exception>
    public static CirculationResult Compute(CaseFile file, CirculationSetup setup, CirculationQuestion question)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(question);
        CirculationParameters changed = question.Changed;
        SettledState state = CirculationSimulator.Settle(changed);
        string reason = state.Reason;
        Trace? run = null;
        if (question.Seconds is double seconds)
        {
            SettledState start = question.Changes.Count == 0 ? state : CirculationSimulator.Settle(question.Start);
            reason = start.Settled || reason.Length > 0 ? reason : $"Before the changes: {start.Reason}";
            run = start.Settled ? CirculationSimulator.Run(start, changed, seconds, CirculationQuestion.SpacingS) : null;
        }

        CirculationResult empty = Without(file, setup, question, reason);
        return reason.Length > 0 ? empty : Filled(empty, state, run);
    }

    /// <summary>A result without numbers.</summary>
    /// <param name="file">The case.</param>
    /// <param name="setup">Its numbers.</param>
    /// <param name="question">Changes and length.</param>
    /// <param name="reason">Why there are none.</param>
    /// <returns>The result.</returns>
    public static CirculationResult Without(CaseFile file, CirculationSetup setup, CirculationQuestion question, string reason)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(question);
        CirculationParameters changed = question.Changed;
        return new CirculationResult(
            CirculationResult.CurrentVersion, Planner.Caution, file.Title ?? "(no title)", file.Invented, false, reason, question.Calibrated,
            Patient(setup, changed), [.. question.Changes.Select(ChangeMade.Of)], [], [], null, null, null, null, null, null, null,
            Parameters(setup, changed, question.Start));
    }

    /// <summary>Every number of the model for a patient.</summary>
    /// <param name="setup">The case; null for the adult of the table.</param>
    /// <param name="patient">The numbers.</param>
    /// <param name="start">The numbers before any change; where fitted they differ from those of the case.</param>
    /// <returns>In the order of the table.</returns>
    internal static IReadOnlyList<ParameterValue> Parameters(CirculationSetup? setup, CirculationParameters patient, CirculationParameters start) =>
    [
        .. ParameterTable.All.Select((d, i) =>
        {
            CirculationParameter parameter = (CirculationParameter)i;
            (double low, double high) = ParameterTable.Bounds(parameter, patient.MassKg);
            Origin origin = setup is null ? Origin.Estimated
                : start[parameter].Equals(setup.Parameters[parameter]) ? setup.Origins.GetValueOrDefault(parameter, Origin.Estimated)
                : Origin.Calculated;
            return new ParameterValue(
                JsonName.Of(d.Name), patient[parameter], d.Unit, origin, low, high, d.Meaning, new Source(d.Source, d.Certainty).ToString());
        }),
    ];

    /// <summary>The patient and circuit as they are told.</summary>
    /// <param name="setup">The case.</param>
    /// <param name="changed">The numbers.</param>
    /// <returns>With assumptions and limits.</returns>
    internal static RunningPatient Patient(CirculationSetup setup, CirculationParameters changed) => new(
        changed.MassKg, changed[CirculationParameter.BloodVolumeMl], setup.CarbonDioxide, setup.Circuit, setup.Assumed, [.. setup.NotChecked, .. Limits]);

    private static CirculationResult Filled(CirculationResult empty, SettledState state, Trace? run)
    {
        BreathRecord breath = state.RequireBreath();
        CirculationSummary summary = state.RequireSummary();
        Trace once = CirculationSimulator.Run(state, state.Parameters, breath.PeriodS, breath.PeriodS / breath.Count);
        return empty with
        {
            Settled = true,
            Quantities = Quantities(state.Parameters, summary),
            Extremes = [.. Enum.GetValues<Signal>().Select(s => new SignalExtremes(
                JsonName.Of(s.ToString()), SignalUnits.Of(s), breath.Lowest(s), breath.Mean(s), breath.Highest(s)))],
            Recirculation = HasVenousReturn(state.Parameters) ? Recirculation(summary) : null,
            AorticValveOpenPercent = summary[CirculationQuantity.AorticValveOpenPercent],
            LeftVentricleLoop = Loop(breath, Signal.LeftVentricularVolume, Signal.LeftVentricularPressure),
            RightVentricleLoop = Loop(breath, Signal.RightVentricularVolume, Signal.RightVentricularPressure),
            Oxygen = OxygenBudgetRates.Of(once.Oxygen),
            Breath = WaveformSet.Of(breath),
            OverTime = run is null ? null : WaveformSet.Of(run),
        };
    }

    /// <summary>The quantities that mean something for a patient, in their order.</summary>
    /// <param name="patient">The numbers.</param>
    /// <returns>Quantities.</returns>
    internal static IReadOnlyList<CirculationQuantity> Told(CirculationParameters patient)
    {
        bool circuit = patient[CirculationParameter.CircuitOn] > 0;
        bool venous = HasVenousReturn(patient);
        return [.. Enum.GetValues<CirculationQuantity>().Where(q => (circuit || !IsOfCircuit(q)) && (venous || !IsOfRecirculation(q)))];
    }

    /// <summary>Their values.</summary>
    /// <param name="patient">The numbers.</param>
    /// <param name="summary">The settled circulation.</param>
    /// <returns>Values with words and units.</returns>
    internal static IReadOnlyList<QuantityValue> Quantities(CirculationParameters patient, CirculationSummary summary) =>
        [.. Told(patient).Select(q => new QuantityValue(JsonName.Of(q.ToString()), QuantityWords.Of(q), Value(summary, q), QuantityWords.UnitOf(q), summary.IsDefined(q) ? null : QuantityWords.NotDefined(q)))];

    private static double? Value(CirculationSummary summary, CirculationQuantity quantity) => summary.IsDefined(quantity) ? summary[quantity] : null;

    private static bool HasVenousReturn(CirculationParameters p) =>
        p[CirculationParameter.CircuitOn] > 0 && p[CirculationParameter.ArterialShareOfReturn] < 1;

    // Without a circuit its quantities mean nothing, and a zero would be read as a finding.
    private static bool IsOfCircuit(CirculationQuantity q) => q is CirculationQuantity.PumpFlowLPerMin or CirculationQuantity.PumpSpeedRatio
        or CirculationQuantity.InletPressureMmHg or CirculationQuantity.OutletPressureMmHg or CirculationQuantity.PreMembraneSaturationPercent
        or CirculationQuantity.PostMembraneSaturationPercent or CirculationQuantity.PreMembraneSwingPercent or CirculationQuantity.OxygenFromMembraneMlPerMin
        or CirculationQuantity.DrainageLowestOpenness or CirculationQuantity.InletPressureSwingMmHg;

    private static bool IsOfRecirculation(CirculationQuantity q) => q is CirculationQuantity.RecirculationPercent or CirculationQuantity.RecirculationLowestPercent
        or CirculationQuantity.RecirculationHighestPercent or CirculationQuantity.RecirculationByContentPercent or CirculationQuantity.EffectiveFlowLPerMin;

    private static RecirculationOutlook Recirculation(CirculationSummary s) => new(
        s[CirculationQuantity.RecirculationPercent], s[CirculationQuantity.RecirculationLowestPercent], s[CirculationQuantity.RecirculationHighestPercent],
        Value(s, CirculationQuantity.RecirculationByContentPercent), s[CirculationQuantity.EffectiveFlowLPerMin]);

    private static PressureVolumeLoop Loop(BreathRecord breath, Signal volume, Signal pressure)
    {
        double area = 0;
        ReadOnlySpan<double> v = breath[volume];
        ReadOnlySpan<double> p = breath[pressure];
        for (int i = 0; i < v.Length; i++)
        {
            int next = i + 1 == v.Length ? 0 : i + 1;
            area += 0.5 * ((v[i] * p[next]) - (v[next] * p[i]));
        }

        return new PressureVolumeLoop(WaveformSet.Rounded(v), WaveformSet.Rounded(p), area / breath.Beats);
    }
}
