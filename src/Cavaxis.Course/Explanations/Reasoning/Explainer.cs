using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Explanations.Trends;
using Cavaxis.Course.Observations;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>Explains a trend: which causes, with what odds, and what to look at next. Never an order.</summary>
public static class Explainer
{
    private const double Unexpected = 3.5;
    private const int OthersShown = 2;

    /// <summary>Explains with the built-in knowledge.</summary>
    /// <param name="window">The trend.</param>
    /// <returns>Explanations.</returns>
    /// <exception cref="InputFaultException">A value is out of range, a quantity stands twice, or a setting cannot be.</exception>
    public static ExplanationReport Explain(TrendWindow window) => Explain(ExplanationKnowledge.BuiltIn, window);

    /// <summary>Explains with given knowledge.</summary>
    /// <param name="knowledge">Causes, signs and patterns.</param>
    /// <param name="window">The trend.</param>
    /// <returns>Explanations.</returns>
    /// <exception cref="InputFaultException">A value is out of range, a quantity stands twice, or a setting cannot be.</exception>
    public static ExplanationReport Explain(ExplanationKnowledge knowledge, TrendWindow window)
    {
        HypothesisSet set = Weighed(knowledge, window);
        double[] odds = HypothesisSet.ByCause(set.All.Select(static h => (h.Cause, h.Weight)));
        EvidenceReader evidence = new(set);
        ImmutableArray<Explanation> explanations = [.. knowledge.Causes
            .Where(c => ExplanationKnowledge.CanBe(c.Cause, window.Support))
            .OrderByDescending(c => odds[(int)c.Cause])
            .Select(c => Of(c, odds[(int)c.Cause], evidence.About(c.Cause)))];
        IReadOnlyList<NextObservation> next = new NextObservationFinder(set, window).Ranked();
        ImmutableArray<MissingSign> missing = [.. knowledge.Signs
            .Where(s => s.Serves(window.Support) && !set.Readings.Any(r => r.Sign.Quantity == s.Quantity))
            .Select(s => new MissingSign(s.Quantity, QuantityTable.Of(s.Quantity).Words, window.Signs.FirstOrDefault(o => o.Quantity == s.Quantity)?.LastReadHoursAgo))];
        return new ExplanationReport(
            explanations,
            [.. set.Readings.Select(static r => r.Sign.Quantity)],
            missing,
            [.. evidence.Beyond(explanations[0].Cause, Unexpected)],
            next.Count == 0 ? null : next[0],
            [.. next.Skip(1).Take(OthersShown)],
            Entropy.Bits(odds),
            Notes(window, missing.Length),
            knowledge.Version);
    }

    /// <summary>Probability of each cause alone, without the evidence and the next observation.</summary>
    /// <param name="knowledge">Causes, signs and patterns.</param>
    /// <param name="window">The trend.</param>
    /// <returns>Causes, likeliest first.</returns>
    /// <exception cref="InputFaultException">As for <see cref="Explain(ExplanationKnowledge, TrendWindow)"/>.</exception>
    public static ImmutableArray<CauseOdds> Odds(ExplanationKnowledge knowledge, TrendWindow window)
    {
        HypothesisSet set = Weighed(knowledge, window);
        double[] odds = HypothesisSet.ByCause(set.All.Select(static h => (h.Cause, h.Weight)));
        return [.. knowledge.Causes
            .Where(c => ExplanationKnowledge.CanBe(c.Cause, window.Support))
            .Select(c => new CauseOdds(c.Cause, c.Words, odds[(int)c.Cause]))
            .OrderByDescending(static o => o.Probability)];
    }

    private static HypothesisSet Weighed(ExplanationKnowledge knowledge, TrendWindow window)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        ArgumentNullException.ThrowIfNull(window);
        WindowCheck.Check(window);
        HypothesisSet set = HypothesisSet.Of(knowledge, window);
        return set.All.Count > 0 ? set : throw new InputFaultException(new InputFault(
            FaultCode.NotFound, "support", window.Support.ToString(), "a kind of support with patterns", "Build patterns for this kind of support first."));
    }

    private static Explanation Of(CauseDefinition cause, double probability, IReadOnlyList<SignEvidence> evidence) => new(
        cause.Cause,
        cause.Words,
        cause.Meaning,
        probability,
        Sureness(probability),
        [.. evidence.Where(static e => e.Weight > EvidenceReader.LeastWeight).OrderByDescending(static e => e.Weight)],
        [.. evidence.Where(static e => e.Weight < -EvidenceReader.LeastWeight).OrderBy(static e => e.Weight)]);

    private static string Sureness(double probability) => probability switch
    {
        >= 0.9 => "very likely among the causes known here",
        >= 0.7 => "likely",
        >= 0.4 => "possible, not settled",
        >= 0.1 => "less likely",
        >= 0.01 => "unlikely",
        _ => "very unlikely among the causes known here",
    };

    private static ImmutableArray<string> Notes(TrendWindow window, int missing)
    {
        List<string> notes =
        [
            "Odds among the causes known here; two causes at once and causes not listed are not weighed. They support a clinician's judgement and order nothing.",
            string.Create(CultureInfo.InvariantCulture, $"{missing} signs have no value now; they count neither for nor against anything."),
        ];
        if (window.Settings.Length > 0)
        {
            notes.Add("What the changed settings would do by themselves was taken off the signs, with half of it as uncertainty.");
        }

        return [.. notes];
    }
}
