using System.Globalization;

namespace Cavaxis.Course.Outcomes;

/// <summary>
/// Cumulative sum of log-likelihood ratios (Page 1954; risk-adjusted after Steiner et al. 2000): S = max(0, S + w), a signal at S ≥ h, after which the sum
/// starts again from 0. Beside it the plain sum of observed minus expected events, which has no limit.
/// </summary>
/// <param name="Setting">What it looks for.</param>
/// <param name="Points">The points, one a case.</param>
/// <param name="Words">What it shows, and how often it would signal by chance.</param>
public sealed record CusumChart(CusumSetting Setting, IReadOnlyList<CusumPoint> Points, string Words)
{
    /// <summary>Draws a chart.</summary>
    /// <param name="cases">Cases in the order of time.</param>
    /// <param name="setting">What to look for.</param>
    /// <returns>The chart.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">A risk is out of range.</exception>
    public static CusumChart Of(IReadOnlyList<CusumCase> cases, CusumSetting setting)
    {
        ArgumentNullException.ThrowIfNull(cases);
        ArgumentNullException.ThrowIfNull(setting);
        List<CusumPoint> points = new(cases.Count);
        double score = 0;
        double difference = 0;
        for (int i = 0; i < cases.Count; i++)
        {
            double weight = setting.Weight(cases[i].Risk, cases[i].Happened);
            score = Math.Max(0, score + weight);
            difference += (cases[i].Happened ? 1 : 0) - cases[i].Risk;
            bool signalled = score >= setting.Limit;
            points.Add(new CusumPoint(i + 1, cases[i], weight, score, signalled, difference));
            score = signalled ? 0 : score;
        }

        return new CusumChart(setting, points, Describe(points, setting));
    }

    private static string Describe(List<CusumPoint> points, CusumSetting setting)
    {
        if (points.Count == 0)
        {
            return "No case with an outcome and an expected risk; there is no chart.";
        }

        int[] signals = [.. points.Where(static p => p.Signalled).Select(static p => p.Index)];
        double risk = points.Average(static p => p.Case.Risk);
        double[] risks = [.. points.Select(static p => p.Case.Risk)];
        double chance = CusumRunLength.Mean(risks, setting, 1);
        double late = CusumRunLength.Mean(risks, setting, setting.OddsRatio);
        string found = signals.Length == 0 ? "no signal" : string.Create(CultureInfo.InvariantCulture, $"a signal at case {string.Join(", ", signals)}");
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{points.Count} cases, odds changed {setting.OddsRatio:0.##} times looked for: {found}. With the expected risk (mean {100 * risk:0} %) holding, a signal by chance comes after about {chance:0} cases on average; with the odds so changed one comes after about {late:0}. {points[^1].ObservedMinusExpected:+0.0;-0.0;0.0} events against those expected.{Small(points)}");
    }

    private static string Small(List<CusumPoint> points) => points.Count < ProgrammeReview.FewestCases
        ? " Small numbers: so few cases can neither show nor rule out a change."
        : string.Empty;
}
