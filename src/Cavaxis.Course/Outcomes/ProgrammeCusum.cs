using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Outcomes;

/// <summary>Charts the deaths of a programme against what was expected of each patient.</summary>
public static class ProgrammeCusum
{
    /// <summary>Deaths before discharge, in the order in which support began.</summary>
    /// <param name="cases">Finished courses, each key once.</param>
    /// <param name="setting">What to look for.</param>
    /// <param name="riskWithoutScore">
    /// Risk of death put in where none was computed, such as a registry's; null to leave those cases out.
    /// </param>
    /// <returns>The chart of the cases with known survival and a risk.</returns>
    /// <exception cref="InputFaultException">A key stands twice or the risk is out of range.</exception>
    public static CusumChart Deaths(IReadOnlyList<ProgrammeCase> cases, CusumSetting setting, double? riskWithoutScore = null)
    {
        ArgumentNullException.ThrowIfNull(cases);
        ProgrammeReview.Distinct(cases);
        if (riskWithoutScore is double given)
        {
            Require.InRange(given, 0.001, 0.999, nameof(riskWithoutScore), "Give the risk as a fraction, 0.4 for 40 %.");
        }

        CusumCase[] charted =
        [
            .. cases.OrderBy(static c => c.BeganOn).ThenBy(static c => c.Key, StringComparer.Ordinal)
                .Select(c => (Risk: c.ExpectedDeath ?? riskWithoutScore, Survived: c.Of(CountedOutcome.SurvivedToDischarge)))
                .Where(static c => c is { Risk: not null, Survived: not null })
                .Select(static c => new CusumCase(c.Risk!.Value, !c.Survived!.Value)),
        ];
        CusumChart chart = CusumChart.Of(charted, setting);
        int left = cases.Count - charted.Length;
        return left == 0
            ? chart
            : chart with { Words = FormattableString.Invariant($"{chart.Words} {left} of {cases.Count} cases are left out, because survival or an expected risk is not known.") };
    }
}
