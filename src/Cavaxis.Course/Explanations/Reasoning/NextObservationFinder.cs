using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Explanations.Trends;
using Cavaxis.Course.Observations;

namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>
/// Finds the observation with the largest expected fall of entropy: for each sign without a value now, its distribution under every
/// hypothesis is summed on a grid of values, and the causes are weighed anew at each (docs/models/explanations.md, section 5).
/// </summary>
internal sealed class NextObservationFinder(HypothesisSet set, TrendWindow window)
{
    private const int Nodes = 81;
    private const double Reach = 5;
    private const double LeastWeight = 1e-5;
    private const int CausesShown = 4;
    private static readonly int Causes = Enum.GetValues<CauseOfChange>().Length;

    /// <summary>Observations not made yet, the most telling first.</summary>
    public IReadOnlyList<NextObservation> Ranked()
    {
        PatternHypothesis[] alive = [.. set.All.Where(static h => h.Weight > LeastWeight)];
        double[] odds = HypothesisSet.ByCause(alive.Select(static h => (h.Cause, h.Weight)));
        double before = Entropy.Bits(odds);
        List<Candidate> found = [];
        for (int place = 0; place < set.Knowledge.Signs.Length; place++)
        {
            SignDefinition sign = set.Knowledge.Signs[place];
            if (sign.Serves(window.Support) && !set.Readings.Any(r => r.Place == place))
            {
                found.Add(Judge(place, sign, alive, before));
            }
        }

        return [.. found.OrderByDescending(static c => c.GainBits).Take(3).Select((c, rank) => Told(c, odds, rank))];
    }

    private Candidate Judge(int place, SignDefinition sign, PatternHypothesis[] alive, double before)
    {
        ObservedSign? stale = window.Signs.FirstOrDefault(s => s.Quantity == sign.Quantity);
        double? old = stale?.Before is null ? null : sign.ToScale(stale.Before.Value);
        double usual = QuantityTable.Of(sign.Quantity).UsualSd;
        double middle = alive.Sum(h => h.Weight * ((old ?? h.Level[place]) + h.Change[place]));
        double oldNoise = stale?.Before is null ? 0 : sign.SpreadToScale(stale.Before.Value, stale.Before.Sd);
        double nowNoise = sign.SpreadToScale(sign.FromScale(middle), usual);
        double noise = Math.Sqrt((oldNoise * oldNoise) + (nowNoise * nowNoise));
        (double Centre, double Scale, GroupTally Tally, double Known)[] views = [.. alive.Select(h =>
        {
            double level = old is null ? h.LevelSpread[place] : 0;
            GroupTally tally = set.Tally(sign.Group, h);
            return ((old ?? h.Level[place]) + h.Change[place], Math.Sqrt((noise * noise) + (h.Spread[place] * h.Spread[place]) + (level * level)), tally, tally.LogDensity());
        })];
        double low = views.Min(static v => v.Centre - (Reach * v.Scale));
        double high = views.Max(static v => v.Centre + (Reach * v.Scale));
        QuantityDefinition limits = QuantityTable.Of(sign.Quantity);
        (low, high) = (Math.Max(low, sign.ToScale(limits.Low)), Math.Min(high, sign.ToScale(limits.High)));
        double[][] mass = new double[Nodes][];
        double total = 0;
        for (int n = 0; n < Nodes; n++)
        {
            double value = low + ((high - low) * (n + 0.5) / Nodes);
            mass[n] = new double[Causes];
            for (int i = 0; i < alive.Length; i++)
            {
                double density = alive[i].Weight * Math.Exp(views[i].Tally.With(value - views[i].Centre, views[i].Scale, sign.Direction).LogDensity() - views[i].Known);
                mass[n][(int)alive[i].Cause] += density;
                total += density;
            }
        }

        double after = mass.Sum(m => m.Sum() / total * Entropy.Bits(Normalised(m)));
        return new Candidate(place, sign, before - after, old, low, high, [.. mass.Select(m => m.Select(x => x / total).ToArray())]);
    }

    private NextObservation Told(Candidate c, double[] odds, int rank)
    {
        QuantityDefinition words = QuantityTable.Of(c.Sign.Quantity);

        // Three answers of about equal likelihood, so that each is worth telling; the borders are those of the third parts.
        double[] node = [.. c.Mass.Select(static m => m.Sum())];
        double sum = 0;
        (int first, int second) = (Nodes / 3, 2 * Nodes / 3);
        (bool firstFound, bool secondFound) = (false, false);
        for (int n = 0; n < Nodes; n++)
        {
            sum += node[n];
            (first, firstFound) = !firstFound && sum >= 1.0 / 3 ? (n + 1, true) : (first, firstFound);
            (second, secondFound) = !secondFound && sum >= 2.0 / 3 ? (Math.Max(n + 1, first + 1), true) : (second, secondFound);
        }

        second = Math.Min(second, Nodes - 1);
        string unit = words.Unit == "1" ? string.Empty : " " + words.Unit;
        double Border(int n) => c.Sign.FromScale(c.Low + ((c.High - c.Low) * n / Nodes));
        string lower = string.Create(CultureInfo.InvariantCulture, $"below {Border(first):G3}{unit}");
        string between = string.Create(CultureInfo.InvariantCulture, $"{Border(first):G3} to {Border(second):G3}{unit}");
        string higher = string.Create(CultureInfo.InvariantCulture, $"above {Border(second):G3}{unit}");
        ImmutableArray<ObservationAnswer> answers = [Answer(lower, c.Mass[..first]), Answer(between, c.Mass[first..second]), Answer(higher, c.Mass[second..])];
        int[] top = [.. Enumerable.Range(0, Causes).OrderByDescending(k => odds[k]).Take(2)];
        string told = c.Old is double old
            ? string.Create(CultureInfo.InvariantCulture, $"The last value in time was {c.Sign.FromScale(old):G3}{unit}. ")
            : string.Empty;
        string why = string.Create(
            CultureInfo.InvariantCulture,
            $"{told}{(rank == 0 ? "Of the signs without a value now it tells most: it" : "It")} mainly tells {set.Knowledge.Causes[top[0]].Words} from {set.Knowledge.Causes[top[1]].Words}.");
        return new NextObservation(c.Sign.Quantity, words.Words, c.Sign.Effort, c.GainBits, why, answers);
    }

    private ObservationAnswer Answer(string words, double[][] mass)
    {
        double[] sum = new double[Causes];
        foreach (double[] m in mass)
        {
            for (int k = 0; k < Causes; k++)
            {
                sum[k] += m[k];
            }
        }

        double[] odds = Normalised(sum);
        return new ObservationAnswer(words, sum.Sum(), [.. Enumerable.Range(0, Causes).OrderByDescending(k => odds[k]).Take(CausesShown)
            .Select(k => new CauseOdds((CauseOfChange)k, set.Knowledge.Causes[k].Words, odds[k]))]);
    }

    private static double[] Normalised(double[] mass)
    {
        double sum = mass.Sum();
        return [.. mass.Select(m => sum > 0 ? m / sum : 0)];
    }

    private sealed record Candidate(int Place, SignDefinition Sign, double GainBits, double? Old, double Low, double High, double[][] Mass);
}
