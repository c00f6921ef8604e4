using System.Collections.Immutable;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Observations;

namespace Cavaxis.Course.Explanations.Simulation;

/// <summary>
/// Computes what causes and settings do to the signs of patients. Takes minutes for the whole library; one fitted patient takes seconds, and
/// the result can stand in for the library (<see cref="ExplanationKnowledge.WithPatients"/>).
/// </summary>
public static class PatternBuilder
{
    private static readonly double[] Sizes = [0.35, 0.65, 1];

    // Small enough that the answer is a slope, large enough to stand out of the settling error.
    private static readonly (SettingKind Setting, CirculationParameter Parameter, double Step, bool Ratio)[] Settings =
    [
        (SettingKind.PumpSpeed, CirculationParameter.PumpSpeedRatio, 0.08, true),
        (SettingKind.Sweep, CirculationParameter.SweepLPerMin, 0.3, true),
        (SettingKind.SweepOxygen, CirculationParameter.SweepOxygenFraction, -0.15, false),
        (SettingKind.InspiredOxygen, CirculationParameter.InspiredOxygenFraction, 0.15, false),
        (SettingKind.Peep, CirculationParameter.PeepCmH2O, 3, false),
    ];

    /// <summary>Computes the patterns of patients.</summary>
    /// <param name="signs">Signs, in the order in which changes are kept.</param>
    /// <param name="patients">Patients before anything happens, with the pump keeping a flow or a speed.</param>
    /// <param name="cancellation">Stops between rows.</param>
    /// <returns>Patterns of those that settle before; a cause at a size at which no circulation settles is left out.</returns>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static IReadOnlyList<PatternPatient> Build(
        IReadOnlyList<SignDefinition> signs,
        IReadOnlyList<(string Name, SupportKind Support, CirculationParameters Patient)> patients,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(signs);
        ArgumentNullException.ThrowIfNull(patients);
        IReadOnlyList<SettledState> before = CirculationSimulator.Settle([.. patients.Select(static p => p.Patient)], cancellation);
        int[] settled = [.. Enumerable.Range(0, patients.Count).Where(i => before[i].Settled)];
        CirculationParameters[] start = [.. before.Select(static s => s.Settled ? AtSpeed(s) : s.Parameters)];
        List<(int Patient, CauseForm? Form, double Size, int Setting, CirculationParameters Numbers)> runs = [];
        foreach (int i in settled)
        {
            CauseForm[] forms = [.. CauseForms.All.Where(f => ExplanationKnowledge.CanBe(f.Cause, patients[i].Support))];
            runs.AddRange(forms.SelectMany(f => Sizes.Select(size => (i, (CauseForm?)f, size, -1, f.Apply(start[i], size)))));
            runs.AddRange(Enumerable.Range(0, Settings.Length).Select(k => (i, (CauseForm?)null, 0.0, k, Set(start[i], k))));
        }

        IReadOnlyList<SettledState> after = CirculationSimulator.Settle([.. runs.Select(static r => r.Numbers)], cancellation);
        return [.. settled.Select(i => Patient(signs, patients[i].Name, patients[i].Support, before[i], [.. runs.Zip(after).Where(x => x.First.Patient == i && x.Second.Settled)]))];
    }

    /// <summary>The numbers of a settled circulation with the pump keeping its speed: what happens then shows as a change of flow.</summary>
    /// <param name="state">It.</param>
    /// <returns>The numbers.</returns>
    public static CirculationParameters AtSpeed(SettledState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        double speed = state.RequireSummary()[Circulation.Signals.CirculationQuantity.PumpSpeedRatio];
        return state.Parameters.With(CirculationParameter.FlowControlPerS, 0).WithNearest(CirculationParameter.PumpSpeedRatio, speed);
    }

    private static CirculationParameters Set(CirculationParameters p, int setting)
    {
        (_, CirculationParameter parameter, double step, bool ratio) = Settings[setting];
        return p.WithNearest(parameter, ratio ? p[parameter] * (1 + step) : p[parameter] + step);
    }

    private static PatternPatient Patient(
        IReadOnlyList<SignDefinition> signs,
        string name,
        SupportKind support,
        SettledState before,
        IReadOnlyList<((int Patient, CauseForm? Form, double Size, int Setting, CirculationParameters Numbers) First, SettledState Second)> runs)
    {
        IReadOnlyDictionary<ObservedQuantity, double> levels = BedsideSigns.Read(before);
        CirculationParameters start = AtSpeed(before);
        ImmutableArray<double> Changes(SettledState after, double over)
        {
            IReadOnlyDictionary<ObservedQuantity, double> now = BedsideSigns.Read(after);
            return [.. signs.Select(s => now.TryGetValue(s.Quantity, out double value) ? Rounded((s.ToScale(value) - s.ToScale(levels[s.Quantity])) / over) : 0)];
        }

        double Step(int setting, CirculationParameters changed)
        {
            (_, CirculationParameter parameter, _, bool ratio) = Settings[setting];
            return ratio ? Math.Log(changed[parameter] / start[parameter]) : changed[parameter] - start[parameter];
        }

        return new PatternPatient(
            name,
            support,
            [.. signs.Select(s => levels.TryGetValue(s.Quantity, out double value) ? Math.Round(value, 3) : double.NaN)],
            [.. runs.Where(static r => r.First.Form is not null).Select(r => new CausePattern(r.First.Form!.Cause, r.First.Form.Variant, r.First.Size, Changes(r.Second, 1)))],
            [.. runs.Where(static r => r.First.Form is null).Select(r => (r.First.Setting, r.Second, Step: Step(r.First.Setting, r.First.Numbers)))
                .Where(static r => Math.Abs(r.Step) > 1e-6)
                .Select(r => new SettingResponse(Settings[r.Setting].Setting, Changes(r.Second, r.Step)))]);
    }

    private static double Rounded(double change) => double.IsFinite(change) ? Math.Round(change, 3) : 0;
}
