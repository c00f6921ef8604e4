using System.Collections.Immutable;
using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Explanations.Trends;

namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>All hypotheses of a kind of support with their probabilities after the signs (docs/models/explanations.md, sections 3 and 4).</summary>
internal sealed class HypothesisSet
{
    /// <summary>Share of an expected change by which the model may err. Assumption, chosen on the tuned half of the suite.</summary>
    public const double ModelError = 0.35;

    /// <summary>Share of what a setting is expected to do by which that may err. Assumption.</summary>
    private const double SettingError = 0.5;

    /// <summary>Readings before tell which patients of the library are alike as if so many of them were independent. Assumption.</summary>
    private const double AlikeReadings = 3;

    private readonly Dictionary<string, SignReading[]> byGroup;

    private HypothesisSet(ExplanationKnowledge knowledge, IReadOnlyList<PatternHypothesis> before, IReadOnlyList<SignReading> readings)
    {
        (Knowledge, Readings) = (knowledge, readings);
        byGroup = readings.GroupBy(static r => r.Sign.Group, StringComparer.Ordinal).ToDictionary(static g => g.Key, static g => g.ToArray(), StringComparer.Ordinal);
        All = Weighed(before);
    }

    /// <summary>What is known.</summary>
    public ExplanationKnowledge Knowledge { get; }

    /// <summary>Hypotheses, each with its probability; they sum to one.</summary>
    public IReadOnlyList<PatternHypothesis> All { get; }

    /// <summary>Signs with a value now.</summary>
    public IReadOnlyList<SignReading> Readings { get; }

    /// <summary>Sets up the hypotheses and weighs them.</summary>
    public static HypothesisSet Of(ExplanationKnowledge knowledge, TrendWindow window)
    {
        PatternPatient[] patients = [.. knowledge.Patients.Where(p => p.Support == window.Support)];
        SignReading[] readings = [.. window.Signs.Select(s => SignReading.Of(knowledge, window.Support, s)).OfType<SignReading>()];
        (double[] middle, double[] between) = Levels(knowledge, patients);
        double[] alike = Alike(knowledge, patients, between, window);
        List<PatternHypothesis> all = [];
        for (int i = 0; i < patients.Length; i++)
        {
            all.AddRange(OfPatient(knowledge, patients[i], alike[i], between, middle, window));
        }

        return new HypothesisSet(knowledge, all, readings);
    }

    /// <summary>Sums of the measured members of a group under a hypothesis.</summary>
    public GroupTally Tally(string group, PatternHypothesis hypothesis)
    {
        GroupTally tally = new(Knowledge.CorrelationOf(group), 0, 0, 0, 0);
        foreach (SignReading reading in byGroup.GetValueOrDefault(group, []))
        {
            (double residual, double scale) = reading.Against(hypothesis);
            tally = tally.With(residual, scale, reading.Sign.Direction);
        }

        return tally;
    }

    /// <summary>Probability of each cause.</summary>
    public static double[] ByCause(IEnumerable<(CauseOfChange Cause, double Weight)> weighted)
    {
        double[] odds = new double[Enum.GetValues<CauseOfChange>().Length];
        foreach ((CauseOfChange cause, double weight) in weighted)
        {
            odds[(int)cause] += weight;
        }

        double sum = odds.Sum();
        return [.. odds.Select(o => sum > 0 ? o / sum : 0)];
    }

    private PatternHypothesis[] Weighed(IReadOnlyList<PatternHypothesis> before)
    {
        double[] logs = [.. before.Select(h => h.LogPrior + byGroup.Keys.Sum(g => Tally(g, h).LogDensity()))];
        double highest = logs.Length == 0 ? 0 : logs.Max();
        double sum = logs.Sum(l => Math.Exp(l - highest));
        return [.. before.Select((h, i) => h with { Weight = Math.Exp(logs[i] - highest) / sum })];
    }

    /// <summary>Middle and spread of every sign between the patients of the library, working scale; usual levels where the model has none.</summary>
    private static (double[] Middle, double[] Between) Levels(ExplanationKnowledge knowledge, PatternPatient[] patients)
    {
        double[] middle = new double[knowledge.Signs.Length];
        double[] between = new double[knowledge.Signs.Length];
        for (int s = 0; s < middle.Length; s++)
        {
            SignDefinition sign = knowledge.Signs[s];
            double[] levels = [.. patients.Select(p => sign.ToScale(p.Levels[s])).Where(double.IsFinite)];
            if (sign.UsualLevel is double usual || levels.Length < 2)
            {
                (middle[s], between[s]) = (sign.ToScale(sign.UsualLevel ?? 0), sign.UsualLevelSd ?? 1e3);
                continue;
            }

            middle[s] = levels.Average();
            between[s] = Math.Max(2 * sign.Drift, Math.Sqrt(levels.Sum(l => (l - middle[s]) * (l - middle[s])) / (levels.Length - 1)));
        }

        return (middle, between);
    }

    /// <summary>How much each patient of the library is like this one before.</summary>
    private static double[] Alike(ExplanationKnowledge knowledge, PatternPatient[] patients, double[] between, TrendWindow window)
    {
        (int Place, double Level)[] before = [.. window.Signs
            .Where(s => s.Before is not null && knowledge.PlaceOf(s.Quantity) >= 0 && knowledge.Signs[knowledge.PlaceOf(s.Quantity)].UsualLevel is null)
            .Select(s => (knowledge.PlaceOf(s.Quantity), knowledge.Signs[knowledge.PlaceOf(s.Quantity)].ToScale(s.Before!.Value)))];
        double[] weights = new double[patients.Length];
        for (int i = 0; i < patients.Length; i++)
        {
            double distance = before.Sum(b =>
            {
                double level = knowledge.Signs[b.Place].ToScale(patients[i].Levels[b.Place]);
                double z = double.IsFinite(level) ? (b.Level - level) / between[b.Place] : 0;
                return Math.Log(1 + (z * z / GroupTally.Freedom));
            });
            weights[i] = Math.Exp(-0.5 * (GroupTally.Freedom + 1) * distance * AlikeReadings / Math.Max(AlikeReadings, before.Length));
        }

        double sum = weights.Sum();
        return [.. weights.Select(w => w / sum)];
    }

    private static IEnumerable<PatternHypothesis> OfPatient(
        ExplanationKnowledge knowledge, PatternPatient patient, double alike, double[] between, double[] middle, TrendWindow window)
    {
        CausePattern nothing = new(CauseOfChange.NothingChanged, "none", 0, [.. new double[knowledge.Signs.Length]]);
        CausePattern limb = new(CauseOfChange.LimbIschaemia, "leg", 0.65, nothing.Changes);
        IEnumerable<CausePattern> trade = ExplanationKnowledge.CanBe(CauseOfChange.LimbIschaemia, window.Support) ? [limb, limb with { Severity = 1 }] : [];
        CausePattern[] patterns = [nothing, .. trade, .. patient.Patterns];
        double[] level = [.. knowledge.Signs.Select((s, i) => s.UsualLevel is not null || !double.IsFinite(patient.Levels[i]) ? middle[i] : s.ToScale(patient.Levels[i]))];
        (double[] set, double[] setSpread) = OfSettings(knowledge, patient, window);
        foreach (IGrouping<CauseOfChange, CausePattern> cause in patterns.GroupBy(static p => p.Cause))
        {
            double prior = knowledge.Causes[(int)cause.Key].PriorOdds.GetValueOrDefault(window.Support);
            if (prior <= 0)
            {
                continue;
            }

            int forms = cause.Select(static p => p.Variant).Distinct(StringComparer.Ordinal).Count();
            foreach (IGrouping<string, CausePattern> form in cause.GroupBy(static p => p.Variant))
            {
                foreach (CausePattern pattern in form)
                {
                    (double[] change, double[] spread) = Expected(knowledge, pattern, set, setSpread);
                    yield return new PatternHypothesis
                    {
                        Cause = pattern.Cause,
                        LogPrior = Math.Log(prior * alike / (forms * form.Count())),
                        Change = change,
                        Spread = spread,
                        Level = level,
                        LevelSpread = between,
                    };
                }
            }
        }
    }

    private static (double[] Change, double[] Spread) OfSettings(ExplanationKnowledge knowledge, PatternPatient patient, TrendWindow window)
    {
        double[] change = new double[knowledge.Signs.Length];
        double[] variance = new double[knowledge.Signs.Length];
        foreach (SettingChange setting in window.Settings)
        {
            ImmutableArray<double>? response = patient.Responses.FirstOrDefault(r => r.Setting == setting.Setting)?.PerUnit;
            for (int s = 0; response is not null && s < change.Length; s++)
            {
                double effect = response.Value[s] * setting.Step;
                change[s] += effect;
                variance[s] += SettingError * SettingError * effect * effect;
            }
        }

        return (change, [.. variance.Select(Math.Sqrt)]);
    }

    private static (double[] Change, double[] Spread) Expected(ExplanationKnowledge knowledge, CausePattern pattern, double[] set, double[] setSpread)
    {
        double[] change = new double[knowledge.Signs.Length];
        double[] variance = new double[knowledge.Signs.Length];
        for (int s = 0; s < change.Length; s++)
        {
            double drift = knowledge.Signs[s].Drift;
            double model = ModelError * pattern.Changes[s];
            change[s] = pattern.Changes[s] + set[s];
            variance[s] = (drift * drift) + (model * model) + (setSpread[s] * setSpread[s]);
        }

        foreach (TradeSign trade in knowledge.TradeSigns)
        {
            if (trade.Cause == pattern.Cause && (trade.Variant is null || trade.Variant == pattern.Variant))
            {
                int s = knowledge.PlaceOf(trade.Quantity);
                double sd = trade.Sd * pattern.Severity;
                change[s] += trade.Change * pattern.Severity;
                variance[s] += sd * sd;
            }
        }

        return (change, [.. variance.Select(Math.Sqrt)]);
    }
}
