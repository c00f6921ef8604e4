using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Explanations.Simulation;
using Cavaxis.Course.Explanations.Trends;
using Cavaxis.Course.Observations;
using Cavaxis.Quantities;

namespace Cavaxis.Course.Tests.Explanations;

/// <summary>
/// The suite: each course by its seed. Causes in turn so that every one is met; support, patient, size, drift, settings, which signs were
/// read, noise, blunders and second causes are drawn.
/// </summary>
public static class InventedCourses
{
    private const double MisledShare = 0.15;
    private const double TwoCausesShare = 0.12;
    private const double SettingsShare = 0.35;
    private const int AttemptsForEach = 4;

    /// <summary>Share of courses in which a quantity is read, by what it takes; the rest is listed alone.</summary>
    private static readonly Dictionary<SignEffort, double> Read = new() { [SignEffort.Look] = 0.85, [SignEffort.Sample] = 0.55, [SignEffort.Imaging] = 0.3 };

    /// <summary>Courses of seeds. A patient who does not settle, or could not live with the numbers, is drawn anew from the same seed's stream.</summary>
    public static IReadOnlyList<InventedCourse> Of(int firstSeed, int count)
    {
        (Plan Plan, SettledState Before)?[] alive = new (Plan, SettledState)?[count];
        for (int attempt = 0; attempt < AttemptsForEach; attempt++)
        {
            int[] open = [.. Enumerable.Range(0, count).Where(k => alive[k] is null)];
            Plan[] plans = [.. open.Select(k => Planned(firstSeed + k, k, attempt))];
            IReadOnlyList<SettledState> settled = CirculationSimulator.SettleForComparison([.. plans.Select(static p => p.Patient)]);
            for (int i = 0; i < open.Length; i++)
            {
                alive[open[i]] = Alive(settled[i]) ? (plans[i], settled[i]) : null;
            }
        }

        (Plan Plan, SettledState Before, CirculationParameters After, List<SettingChange> Settings)[] happened = [.. alive.Where(static a => a is not null).Select(static a =>
        {
            List<SettingChange> settings = [];
            return (a!.Value.Plan, a.Value.Before, Happens(a.Value.Plan, PatternBuilder.AtSpeed(a.Value.Before), settings), settings);
        })];
        IReadOnlyList<SettledState> after = CirculationSimulator.SettleForComparison([.. happened.Select(static h => h.After)], [.. happened.Select(static h => h.Before)]);
        return [.. happened.Zip(after).Where(static x => x.Second.Settled).Select(static x => Observed(x.First.Plan, x.First.Before, x.Second, x.First.Settings))];
    }

    private static Plan Planned(int seed, int turn, int attempt)
    {
        Random random = new((seed * 7) + attempt);
        SupportKind[] kinds = [SupportKind.VenoVenous, SupportKind.VenoArterial, SupportKind.VenoVenous, SupportKind.VenoArterial, SupportKind.VenoArterialVenous];
        CauseOfChange[] causes = Enum.GetValues<CauseOfChange>();
        CauseOfChange main = causes[turn % causes.Length];
        SupportKind[] possible = [.. kinds.Where(k => ExplanationKnowledge.CanBe(main, k))];
        SupportKind support = possible[random.Next(possible.Length)];
        List<CauseOfChange> happening = [main];
        if (main != CauseOfChange.NothingChanged && random.NextDouble() < TwoCausesShare)
        {
            CauseOfChange[] others = [.. causes.Where(c => c != main && c != CauseOfChange.NothingChanged && ExplanationKnowledge.CanBe(c, support))];
            happening.Add(others[random.Next(others.Length)]);
        }

        return new Plan(seed, support, happening, 0.3 + (0.7 * random.NextDouble()), InventedPatients.Draw(support, random), random);
    }

    private static bool Alive(SettledState state)
    {
        if (!state.Settled)
        {
            return false;
        }

        IReadOnlyDictionary<ObservedQuantity, double> signs = BedsideSigns.Read(state);
        return signs[ObservedQuantity.MeanArterialPressureMmHg] is > 40 and < 130
            && signs[ObservedQuantity.RightArmSaturationPercent] > 72
            && signs[ObservedQuantity.WedgePressureMmHg] < 38
            && signs[ObservedQuantity.PumpFlowLPerMin] > 0.9 * state.Parameters[CirculationParameter.TargetFlowLPerMin];
    }

    private static CirculationParameters Happens(Plan plan, CirculationParameters start, List<SettingChange> settings)
    {
        CirculationParameters p = InventedCauses.Drift(start, plan.Random);
        for (int i = 0; i < plan.Causes.Count; i++)
        {
            p = InventedCauses.Apply(p, plan.Causes[i], i == 0 ? plan.Size : 0.7 * plan.Size, plan.Random);
        }

        if (plan.Random.NextDouble() > SettingsShare)
        {
            return p;
        }

        (SettingKind setting, CirculationParameter which, double factor, double unit) = plan.Random.Next(4) switch
        {
            0 => (SettingKind.PumpSpeed, CirculationParameter.PumpSpeedRatio, 1 + (0.1 * plan.Random.NextDouble()), 3500.0),
            1 => (SettingKind.Sweep, CirculationParameter.SweepLPerMin, 1 + (0.6 * plan.Random.NextDouble()), 1),
            2 => (SettingKind.InspiredOxygen, CirculationParameter.InspiredOxygenFraction, 1 + (0.3 * plan.Random.NextDouble()), 1),
            _ => (SettingKind.Peep, CirculationParameter.PeepCmH2O, 1 + (0.3 * plan.Random.NextDouble()), 1),
        };
        CirculationParameters set = p.WithNearest(which, p[which] * factor);
        settings.Add(new SettingChange(setting, unit * p[which], unit * set[which]));
        return set;
    }

    private static InventedCourse Observed(Plan plan, SettledState before, SettledState after, List<SettingChange> settings)
    {
        Random random = plan.Random;
        Dictionary<ObservedQuantity, double> first = new(BedsideSigns.Read(before));
        Dictionary<ObservedQuantity, double> second = new(BedsideSigns.Read(after));
        double abdomen = second[ObservedQuantity.AbdominalPressureMmHg] - first[ObservedQuantity.AbdominalPressureMmHg];
        first[ObservedQuantity.HaemoglobinGPerDl] = second[ObservedQuantity.HaemoglobinGPerDl] = before.Parameters[CirculationParameter.HaemoglobinGPerDl];
        foreach ((ObservedQuantity quantity, double level) in InventedTradeSigns.Before(random))
        {
            (first[quantity], second[quantity]) = (level, level);
        }

        second[ObservedQuantity.AbdominalPressureMmHg] += abdomen;
        foreach (CauseOfChange cause in plan.Causes)
        {
            InventedTradeSigns.Apply(cause, plan.Size, second, random);
        }

        SignDefinition[] all = [.. ExplanationKnowledge.BuiltIn.Signs.Where(s => s.Serves(plan.Support))];
        bool[] chosen = [.. all.Select(s => random.NextDouble() < Read[s.Effort])];
        SignDefinition[] read = [.. all.Where((_, i) => chosen[i])];
        bool misled = random.NextDouble() < MisledShare;
        int blunder = misled ? random.Next(read.Length) : -1;
        ObservedSign Reading(SignDefinition s, double wrong)
        {
            double sd = QuantityTable.Of(s.Quantity).UsualSd;
            double drift = s.LogOffset is null ? s.Drift : s.Drift * (second[s.Quantity] + s.LogOffset.Value);
            double noisy = Noisy(s.Quantity, second[s.Quantity] + (0.7 * drift * InventedPatients.Normal(random)), sd, random);
            bool beforeKnown = s.Effort == SignEffort.Look || random.NextDouble() < 0.8;
            return new ObservedSign(
                s.Quantity,
                beforeKnown ? Estimate.Normal(Noisy(s.Quantity, first[s.Quantity], sd, random), sd, Origin.Measured) : null,
                Estimate.Normal(Kept(s.Quantity, noisy + (wrong * Math.Max(sd, drift))), sd, Origin.Measured));
        }

        ObservedSign[] signs = [.. read.Select((s, i) => Reading(s, i == blunder ? (random.NextDouble() < 0.5 ? -6 : 6) : 0))];
        ObservedSign[] unread = [.. all.Where((_, i) => !chosen[i]).Select(s => Reading(s, 0) with { Before = null })];
        return new InventedCourse(plan.Seed, new TrendWindow(plan.Support, [.. signs], [.. settings]), plan.Causes, misled, unread);
    }

    private static double Noisy(ObservedQuantity quantity, double value, double sd, Random random) => Kept(quantity, value + (sd * InventedPatients.Normal(random)));

    private static double Kept(ObservedQuantity quantity, double value) => Math.Clamp(value, QuantityTable.Of(quantity).Low, QuantityTable.Of(quantity).High);

    private sealed record Plan(int Seed, SupportKind Support, IReadOnlyList<CauseOfChange> Causes, double Size, CirculationParameters Patient, Random Random);
}
