using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Explanations.Trends;

namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>A sign with a value now, on its working scale.</summary>
/// <param name="Place">Place among the signs.</param>
/// <param name="Sign">Its definition.</param>
/// <param name="Observed">What was observed.</param>
/// <param name="Now">Value now, working scale.</param>
/// <param name="Before">Value before, working scale; null where unknown.</param>
/// <param name="Noise">Spread of the readings together, working scale.</param>
internal sealed record SignReading(int Place, SignDefinition Sign, ObservedSign Observed, double Now, double? Before, double Noise)
{
    /// <summary>Puts an observation on its working scale.</summary>
    public static SignReading? Of(ExplanationKnowledge knowledge, SupportKind support, ObservedSign observed)
    {
        int place = knowledge.PlaceOf(observed.Quantity);
        if (place < 0 || observed.Now is null || !knowledge.Signs[place].Serves(support))
        {
            return null;
        }

        SignDefinition sign = knowledge.Signs[place];
        double now = sign.SpreadToScale(observed.Now.Value, observed.Now.Sd);
        double before = observed.Before is null ? 0 : sign.SpreadToScale(observed.Before.Value, observed.Before.Sd);
        return new SignReading(
            place, sign, observed, sign.ToScale(observed.Now.Value), observed.Before is null ? null : sign.ToScale(observed.Before.Value), Math.Sqrt((now * now) + (before * before)));
    }

    /// <summary>What is left when the hypothesis is taken off, and the scale on which it is judged.</summary>
    public (double Residual, double Scale) Against(PatternHypothesis hypothesis)
    {
        double spread = hypothesis.Spread[Place];
        double level = Before is null ? hypothesis.LevelSpread[Place] : 0;
        double from = Before ?? hypothesis.Level[Place];
        return (Now - from - hypothesis.Change[Place], Math.Sqrt((Noise * Noise) + (spread * spread) + (level * level)));
    }
}
