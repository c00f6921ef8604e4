using System.Globalization;
using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Observations;
using Cavaxis.Quantities;

namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>What each sign alone says about a cause.</summary>
internal sealed class EvidenceReader(HypothesisSet set)
{
    /// <summary>Least weight that is told: a factor of 1.35 on the odds.</summary>
    public const double LeastWeight = 0.3;

    private const double LeastShare = 1e-9;

    /// <summary>Evidence of all signs about a cause.</summary>
    public IReadOnlyList<SignEvidence> About(CauseOfChange cause) => [.. set.Readings.Select(r => About(cause, r))];

    /// <summary>Sentences on readings further than so many spreads from what a cause lets expect.</summary>
    public IEnumerable<string> Beyond(CauseOfChange cause, double spreads)
    {
        foreach (SignReading reading in set.Readings)
        {
            (double weight, double sum) = (0, 0);
            foreach (PatternHypothesis h in set.All.Where(h => h.Cause == cause))
            {
                (double residual, double scale) = reading.Against(h);
                weight += h.Weight;
                sum += h.Weight * residual / scale;
            }

            if (weight > 0 && Math.Abs(sum / weight) > spreads)
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"The {QuantityTable.Of(reading.Sign.Quantity).Words} lies {Math.Abs(sum / weight):F1} spreads from what the likeliest cause lets expect: check the reading, or think of another or a second cause.");
            }
        }
    }

    private SignEvidence About(CauseOfChange cause, SignReading reading)
    {
        GroupTally alone = new(0, 0, 0, 0, 0);
        (double inside, double insideWeight, double outside, double outsideWeight) = (0, 0, 0, 0);
        (double mean, double square, double spread) = (0, 0, 0);
        foreach (PatternHypothesis h in set.All)
        {
            (double residual, double scale) = reading.Against(h);
            double weight = Math.Max(h.Weight, LeastShare * Math.Exp(Math.Max(-20, h.LogPrior)));
            double density = Math.Exp(alone.With(residual, scale, 1).LogDensity());
            if (h.Cause == cause)
            {
                double expected = h.Change[reading.Place] + (reading.Before is null ? h.Level[reading.Place] : 0);
                (inside, insideWeight) = (inside + (weight * density), insideWeight + weight);
                (mean, square, spread) = (mean + (weight * expected), square + (weight * expected * expected), spread + (weight * ((scale * scale) - (reading.Noise * reading.Noise))));
            }
            else
            {
                (outside, outsideWeight) = (outside + (weight * density), outsideWeight + weight);
            }
        }

        mean /= insideWeight;
        double sd = Math.Sqrt(Math.Max(0, (square / insideWeight) - (mean * mean)) + (spread / insideWeight));
        double factor = Math.Log(Math.Max(1e-12, inside / insideWeight) / Math.Max(1e-12, outside / outsideWeight));
        return Told(reading, mean, sd, factor);
    }

    /// <summary>Back from the working scale to the unit of the quantity.</summary>
    private static SignEvidence Told(SignReading reading, double mean, double sd, double factor)
    {
        QuantityDefinition words = QuantityTable.Of(reading.Sign.Quantity);
        SignDefinition sign = reading.Sign;
        Estimate now = reading.Observed.Now!;
        Estimate? before = reading.Observed.Before;
        double from = before?.Value ?? 0;
        double expected = before is null ? sign.FromScale(mean) : sign.FromScale(reading.Before!.Value + mean) - from;
        double top = sign.LogOffset is null ? 1 : Math.Exp(before is null ? mean : reading.Before!.Value + mean);
        Estimate change = Estimate.Normal(now.Value - from, Math.Sqrt((now.Sd * now.Sd) + ((before?.Sd ?? 0) * (before?.Sd ?? 0))), Origin.Calculated);
        Estimate wanted = Estimate.Normal(expected, sd * top, Origin.Estimated);
        string unit = words.Unit == "1" ? string.Empty : " " + words.Unit;
        string sentence = before is null
            ? string.Create(CultureInfo.InvariantCulture, $"{words.Words} is {now.Value:0.##} ± {now.Sd:0.##}{unit} (no reading before; with this cause about {wanted.Value:0.##} ± {wanted.Sd:0.##} in patients like this one)")
            : string.Create(CultureInfo.InvariantCulture, $"{words.Words} changed by {change.Value:+0.##;-0.##;0} ± {change.Sd:0.##}{unit} (expected {wanted.Value:+0.##;-0.##;0} ± {wanted.Sd:0.##})");
        return new SignEvidence(reading.Sign.Quantity, change, wanted, before is not null, factor, sentence);
    }
}
