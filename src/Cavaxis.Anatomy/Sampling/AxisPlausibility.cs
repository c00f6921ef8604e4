using static Cavaxis.Anatomy.Axis.AxisDimension;

namespace Cavaxis.Anatomy.Sampling;

/// <summary>
/// What no anatomy can be. The Gaussian has tails in which veins change places; such draws are rejected, which
/// truncates the distribution. Where a measurement forces the tail, the order is mended at last.
/// </summary>
internal static class AxisPlausibility
{
    /// <summary>A part is at most this share of the way that contains it.</summary>
    public const double LargestShare = 0.9;

    /// <summary>Largest bend in one plane, degrees: beyond half of it at each mouth the cubic path is no longer a good
    /// curve.</summary>
    public const double LargestBendDeg = 80;

    /// <summary>Largest offset of the mouths against their distance (a slope of the chord of 0.5).</summary>
    public const double LargestOffsetShare = 0.45;

    /// <summary>Lowest tricuspid fraction; the highest is one less it.</summary>
    public const double LowestFraction = 0.05;

    /// <summary>How much shorter than the right way the left one may be.</summary>
    public const double LargestLeftDeficit = 0.3;

    /// <summary>Whether one sample can be an anatomy.</summary>
    public static bool IsPossible(AxisSamples samples, int i) =>
        samples[IcajToHepaticVein][i] <= LargestShare * samples[IcajToRenalVein][i]
        && samples[IcajToRenalVein][i] + samples[RenalVeinToIliacConfluence][i] <= LargestShare * samples[RightGroinSkinToIcaj][i]
        && samples[SvcLength][i] <= LargestShare * samples[RightNeckSkinToScaj][i]
        && samples[LeftNeckExtra][i] >= -LargestLeftDeficit * samples[RightNeckSkinToScaj][i]
        && samples[LeftGroinExtra][i] >= -LargestLeftDeficit * samples[RightGroinSkinToIcaj][i]
        && Math.Abs(samples[CavalBendFrontal][i]) <= LargestBendDeg
        && Math.Abs(samples[CavalBendSagittal][i]) <= LargestBendDeg
        && Math.Abs(samples[MouthOffset][i]) <= LargestOffsetShare * samples[AtrialSpan][i]
        && samples[TricuspidFraction][i] is >= LowestFraction and <= 1 - LowestFraction;

    /// <summary>Moves what is impossible to the nearest possible value, ways before their parts.</summary>
    public static void Mend(AxisSamples samples, int i)
    {
        ref double renal = ref samples.Column(IcajToRenalVein)[i];
        ref double infrarenal = ref samples.Column(RenalVeinToIliacConfluence)[i];
        double excess = (renal + infrarenal) / (LargestShare * samples[RightGroinSkinToIcaj][i]);
        if (excess > 1)
        {
            renal /= excess;
            infrarenal /= excess;
        }

        ref double hepatic = ref samples.Column(IcajToHepaticVein)[i];
        hepatic = Math.Min(hepatic, LargestShare * renal);
        ref double svc = ref samples.Column(SvcLength)[i];
        svc = Math.Min(svc, LargestShare * samples[RightNeckSkinToScaj][i]);
        ref double leftNeck = ref samples.Column(LeftNeckExtra)[i];
        leftNeck = Math.Max(leftNeck, -LargestLeftDeficit * samples[RightNeckSkinToScaj][i]);
        ref double leftGroin = ref samples.Column(LeftGroinExtra)[i];
        leftGroin = Math.Max(leftGroin, -LargestLeftDeficit * samples[RightGroinSkinToIcaj][i]);
        Clamp(ref samples.Column(CavalBendFrontal)[i], LargestBendDeg);
        Clamp(ref samples.Column(CavalBendSagittal)[i], LargestBendDeg);
        Clamp(ref samples.Column(MouthOffset)[i], LargestOffsetShare * samples[AtrialSpan][i]);
        ref double fraction = ref samples.Column(TricuspidFraction)[i];
        fraction = Math.Clamp(fraction, LowestFraction, 1 - LowestFraction);
    }

    private static void Clamp(ref double value, double bound) => value = Math.Clamp(value, -bound, bound);
}
