using System.Globalization;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Criteria;

/// <summary>One published condition on one reading: a side of a threshold, with its source.</summary>
public sealed record Criterion
{
    /// <summary>A criterion.</summary>
    /// <param name="key">Stable name in camelCase.</param>
    /// <param name="words">What is read, in lower-case words without unit.</param>
    /// <param name="comparison">Side of the threshold that meets it.</param>
    /// <param name="threshold">Threshold in the unit.</param>
    /// <param name="unit">Unit as people read it; 1 for none.</param>
    /// <param name="source">Who published it.</param>
    /// <param name="note">What has to be known to read it; may be empty.</param>
    /// <param name="other">Where another source sets the threshold.</param>
    /// <exception cref="InputFaultException">A name is empty or a threshold is not finite.</exception>
    public Criterion(
        string key, string words, CriterionComparison comparison, double threshold, string unit, Source source, string note = "", OtherThreshold? other = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        Key = Named(key, nameof(key));
        Words = Named(words, nameof(words));
        Unit = Named(unit, nameof(unit));
        Comparison = comparison;
        Threshold = Finite(threshold);
        (Source, Note, Other) = (source, note, other);
        if (other is not null)
        {
            Finite(other.Value);
        }
    }

    /// <summary>Stable name in camelCase.</summary>
    public string Key { get; }

    /// <summary>What is read, in lower-case words without unit.</summary>
    public string Words { get; }

    /// <summary>Side of the threshold that meets it.</summary>
    public CriterionComparison Comparison { get; }

    /// <summary>Threshold in <see cref="Unit"/>.</summary>
    public double Threshold { get; }

    /// <summary>Unit as people read it; 1 for none.</summary>
    public string Unit { get; }

    /// <summary>Who published it.</summary>
    public Source Source { get; }

    /// <summary>What has to be known to read it; may be empty.</summary>
    public string Note { get; }

    /// <summary>Where another source sets the threshold; null for nowhere known.</summary>
    public OtherThreshold? Other { get; }

    /// <summary>The condition in words, such as "at least 10 cm".</summary>
    public string Condition => string.Create(CultureInfo.InvariantCulture, $"{Side} {Threshold:0.###}{Suffix}");

    private string Side => Comparison switch
    {
        CriterionComparison.AtLeast => "at least",
        CriterionComparison.Above => "above",
        CriterionComparison.AtMost => "at most",
        _ => "below",
    };

    private string Suffix => Unit == "1" ? string.Empty : " " + Unit;

    /// <summary>Holds a reading against the criterion. The reading's best value decides; its error is told beside it.</summary>
    /// <param name="observed">The reading in <see cref="Unit"/>; null when nothing was measured.</param>
    /// <returns>The judgement.</returns>
    public CriterionJudgement Judge(Estimate? observed)
    {
        if (observed is null)
        {
            return new CriterionJudgement(this, CriterionVerdict.NotMeasured, null, false, $"{Words}: not measured; the criterion is {Condition}.");
        }

        bool met = IsMetBy(observed.Value, Threshold);
        bool close = IsMetBy(observed.Low, Threshold) != IsMetBy(observed.High, Threshold);
        string words = string.Create(
            CultureInfo.InvariantCulture,
            $"{Words}: {observed.Value:0.###}{Suffix} (90 % interval {observed.Low:0.###} to {observed.High:0.###}); {(met ? "meets" : "does not meet")} {Condition}{(close ? ", within its error" : string.Empty)}.");
        if (Other is OtherThreshold other && IsMetBy(observed.Value, other.Value) != met)
        {
            words += string.Create(CultureInfo.InvariantCulture, $" It is the other way round at {other.Value:0.###}{Suffix} ({other.Source.Citation}).");
        }

        return new CriterionJudgement(this, met ? CriterionVerdict.Met : CriterionVerdict.NotMet, observed, close, words);
    }

    private bool IsMetBy(double value, double threshold) => Comparison switch
    {
        CriterionComparison.AtLeast => value >= threshold,
        CriterionComparison.Above => value > threshold,
        CriterionComparison.AtMost => value <= threshold,
        _ => value < threshold,
    };

    private static string Named(string text, string field) => string.IsNullOrWhiteSpace(text)
        ? throw new InputFaultException(new InputFault(FaultCode.MissingField, $"criterion.{field}", "(nothing)", "some words", "Name the criterion."))
        : text;

    private static double Finite(double threshold) =>
        Require.InRange(threshold, -1e9, 1e9, "criterion.threshold", "Give the threshold in the unit of the criterion.");
}
