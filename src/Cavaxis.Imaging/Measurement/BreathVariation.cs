using System.Collections.Immutable;
using Cavaxis.Quantities;

namespace Cavaxis.Imaging.Measurement;

/// <summary>How the diameter of a vein changes over the breath.</summary>
/// <param name="Widest">The widest diameter.</param>
/// <param name="Narrowest">The narrowest.</param>
/// <param name="CollapsibilityPercent">(widest − narrowest)/widest, %; used where the patient breathes.</param>
/// <param name="DistensibilityPercent">(widest − narrowest)/narrowest, %; used under controlled ventilation.</param>
/// <param name="VariationPercent">(widest − narrowest)/mean of the two, %.</param>
/// <param name="RangeByChancePercent">The collapsibility that placing errors alone would show on a vein that does not move, %.</param>
/// <param name="SecondsSeen">From the first to the last frame, s; null where the file does not say.</param>
/// <param name="Remarks">What has to be known with the numbers.</param>
public sealed record BreathVariation(
    ImageMeasurement Widest,
    ImageMeasurement Narrowest,
    Estimate CollapsibilityPercent,
    Estimate DistensibilityPercent,
    Estimate VariationPercent,
    double RangeByChancePercent,
    double? SecondsSeen,
    ImmutableArray<string> Remarks)
{
    /// <summary>Collapsibility index.</summary>
    public static Source CollapsibilityDefinition { get; } = new("(maximum − minimum diameter)/maximum × 100 %, course of emergency ultrasound; as in the American Society of Echocardiography's rule", Certainty.SeenSecondHand);

    /// <summary>Distensibility index.</summary>
    public static Source DistensibilityDefinition { get; } = new("Barbier et al. 2004, Intensive Care Med 30:1740: (Dmax − Dmin)/Dmin", Certainty.SeenSecondHand);

    /// <summary>Variation about the mean.</summary>
    public static Source VariationDefinition { get; } = new("Feissel et al. 2004, Intensive Care Med 30:1834: (Dmax − Dmin)/mean", Certainty.FromMemory);
}
