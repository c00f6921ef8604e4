using System.Globalization;
using System.Text;
using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Explanations.Reasoning;

namespace Cavaxis.Course.Tests.Explanations;

/// <summary>How often and how well calibrated the explanations name the cause.</summary>
public sealed class SuiteScore
{
    private const int Bins = 10;
    private readonly IReadOnlyList<InventedCourse> courses;
    private readonly IReadOnlyList<IReadOnlyList<CauseOdds>> odds;

    public SuiteScore(IReadOnlyList<InventedCourse> courses, IReadOnlyList<IReadOnlyList<CauseOdds>> odds) => (this.courses, this.odds) = (courses, odds);

    public static SuiteScore Of(ExplanationKnowledge knowledge, IReadOnlyList<InventedCourse> courses) =>
        new(courses, [.. courses.AsParallel().AsOrdered().Select(c => (IReadOnlyList<CauseOdds>)Explainer.Odds(knowledge, c.Window))]);

    public int Count => courses.Count;

    public int Top1 => Hits(1);

    public int Top3 => Hits(3);

    /// <summary>Courses whose main cause stands among the first so many.</summary>
    public int Hits(int among) => courses.Zip(odds).Count(x => x.Second.Take(among).Any(o => x.First.Causes.Contains(o.Cause)));

    /// <summary>Mean over the courses of the sum over the causes of (odds − truth)²; two causes share the truth.</summary>
    public double Brier => courses.Zip(odds).Average(static x => x.Second.Sum(o =>
    {
        double truth = x.First.Causes.Contains(o.Cause) ? 1.0 / x.First.Causes.Count : 0;
        return (o.Probability - truth) * (o.Probability - truth);
    }));

    /// <summary>Brier score of equal odds for all causes.</summary>
    public double BrierOfEqualOdds => courses.Zip(odds).Average(static x => x.Second.Sum(o =>
    {
        double truth = x.First.Causes.Contains(o.Cause) ? 1.0 / x.First.Causes.Count : 0;
        return ((1.0 / x.Second.Count) - truth) * ((1.0 / x.Second.Count) - truth);
    }));

    /// <summary>Expected calibration error of the first cause: mean over the courses of |odds − share right| of their tenth.</summary>
    public double CalibrationError => Reliability().Sum(r => (double)r.Count / Count * Math.Abs(r.Odds - r.Right));

    /// <summary>Odds of the first cause in tenths, with the share in which it was a true one.</summary>
    public IEnumerable<(int Bin, int Count, double Odds, double Right)> Reliability() => courses.Zip(odds)
        .Select(static x => (Odds: x.Second[0].Probability, Right: x.First.Causes.Contains(x.Second[0].Cause) ? 1.0 : 0))
        .GroupBy(static x => Math.Min(Bins - 1, (int)(Bins * x.Odds)))
        .OrderBy(static g => g.Key)
        .Select(static g => (g.Key, g.Count(), g.Average(static x => x.Odds), g.Average(static x => x.Right)));

    /// <summary>Share of first causes that is right on average when causes are dealt out at random among courses of the same support.</summary>
    public double ChanceOfFirst => courses.Zip(odds).Average(x =>
    {
        InventedCourse[] kind = [.. courses.Where(c => c.Window.Support == x.First.Window.Support)];
        return (double)kind.Count(c => c.Causes.Contains(x.Second[0].Cause)) / kind.Length;
    });

    /// <summary>Calibration error of one drawn set of outcomes that come true exactly as often as the odds say.</summary>
    public double CalibrationErrorIfPerfect(Random random) => odds
        .Select(o => (Odds: o[0].Probability, Right: random.NextDouble() < o[0].Probability ? 1.0 : 0))
        .GroupBy(static x => Math.Min(Bins - 1, (int)(Bins * x.Odds)))
        .Sum(g => (double)g.Count() / Count * Math.Abs(g.Average(static x => x.Odds) - g.Average(static x => x.Right)));

    /// <summary>The same odds against causes dealt out anew among courses of the same support.</summary>
    public SuiteScore Shuffled(int seed)
    {
        Random random = new(seed);
        InventedCourse[] dealt = [.. courses];
        foreach (IGrouping<SupportKind, int> kind in Enumerable.Range(0, dealt.Length).GroupBy(i => dealt[i].Window.Support))
        {
            int[] places = [.. kind];
            IReadOnlyList<CauseOfChange>[] causes = [.. places.Select(i => dealt[i].Causes)];
            random.Shuffle(causes);
            for (int k = 0; k < places.Length; k++)
            {
                dealt[places[k]] = dealt[places[k]] with { Causes = causes[k] };
            }
        }

        return new SuiteScore(dealt, odds);
    }

    public string Table(string title)
    {
        CultureInfo culture = CultureInfo.InvariantCulture;
        StringBuilder text = new();
        text.Append(culture, $"## {title}\n\n{Count} courses. First named is a true cause: **{Top1} ({100.0 * Top1 / Count:F0} %)**; among the first three: **{Top3} ({100.0 * Top3 / Count:F0} %)**. ");
        text.Append(culture, $"Brier score {Brier:F3} (equal odds {BrierOfEqualOdds:F3}), expected calibration error {CalibrationError:F3}.\n\n");
        text.Append("| odds of the first | courses | mean odds | share right |\n|---|---|---|---|\n");
        foreach ((int bin, int count, double mean, double right) in Reliability())
        {
            text.Append(culture, $"| {bin / 10.0:F1}-{(bin + 1) / 10.0:F1} | {count} | {mean:F2} | {right:F2} |\n");
        }

        text.Append("\n| main cause | courses | first | in three | first named instead |\n|---|---|---|---|---|\n");
        foreach (IGrouping<CauseOfChange, (InventedCourse Course, IReadOnlyList<CauseOdds> Odds)> group in courses.Zip(odds).GroupBy(static x => x.First.Main).OrderBy(static g => g.Key))
        {
            string instead = string.Join(", ", group.Where(static x => !x.Course.Causes.Contains(x.Odds[0].Cause)).GroupBy(static x => x.Odds[0].Cause).OrderByDescending(static g => g.Count()).Select(static g => $"{g.Key} {g.Count()}"));
            text.Append(culture, $"| {group.Key} | {group.Count()} | {group.Count(static x => x.Course.Causes.Contains(x.Odds[0].Cause))} | {group.Count(static x => x.Odds.Take(3).Any(o => x.Course.Causes.Contains(o.Cause)))} | {instead} |\n");
        }

        text.Append("\n| courses | count | first | in three |\n|---|---|---|---|\n");
        Line("one cause, no blunder", static c => c.Causes.Count == 1 && !c.Misled);
        Line("one reading misleads", static c => c.Misled);
        Line("two causes", static c => c.Causes.Count > 1);
        Line("a setting changed", static c => c.Window.Settings.Length > 0);
        foreach (SupportKind kind in Enum.GetValues<SupportKind>())
        {
            Line(kind.ToString(), c => c.Window.Support == kind);
        }

        return text.Append('\n').ToString();

        void Line(string name, Func<InventedCourse, bool> of)
        {
            (InventedCourse Course, IReadOnlyList<CauseOdds> Odds)[] part = [.. courses.Zip(odds).Where(x => of(x.First))];
            text.Append(culture, $"| {name} | {part.Length} | {part.Count(static x => x.Course.Causes.Contains(x.Odds[0].Cause))} | {part.Count(static x => x.Odds.Take(3).Any(o => x.Course.Causes.Contains(o.Cause)))} |\n");
        }
    }
}
