using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Quantities;

namespace Cavaxis.Anatomy.Population;

/// <summary>
/// Right jugular skin to SCAJ: height/10 + 0.3 cm, SD 1.8 cm in the reference adult for a mid-neck entry, less for a
/// low one. One line holds from newborn to adult: the published line for children (1.7 + 0.07 × height cm, Yoon 2006)
/// keeps 97.5 % of the tips above the atrium, so it is a low quantile of this law and serves as a check, not as a mean.
/// </summary>
public static class NeckDepthLaw
{
    /// <summary>How much nearer the SCAJ a low entry lies, mm, in the reference adult.</summary>
    public const double LowEntryShiftMm = 25;

    /// <summary>Relative spread at a mid-neck entry: 18 mm of 173 mm.</summary>
    public const double MidNeckRelativeSpread = 18.0 / 173.0;

    /// <summary>Spread at a low entry against the mid-neck depth: the clavicle fixes the height better (15 mm of 173
    /// mm).</summary>
    public const double LowNeckRelativeSpread = 15.0 / 173.0;

    /// <summary>Where the law comes from.</summary>
    public static Source Source { get; } = new(
        "height/10 + 0.3 cm, SD 1.8 cm, low entry 2 to 3 cm less: tips placed by height/10 (Peres 1990) against the carina in 400 and 180 adults, plus carina to SCAJ", Certainty.Derived);

    /// <summary>Where its use in children comes from.</summary>
    public static Source GrowthSource { get; } = new("the adult line down to newborn height", Certainty.Assumption);

    /// <summary>Depth and spread at a given height of entry; the even mixture where it is not known.</summary>
    /// <param name="habitus">The patient.</param>
    /// <param name="entry">Height of the entry.</param>
    /// <returns>Middle and standard deviation, mm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not an entry.</exception>
    public static (double MiddleMm, double SdMm) DepthMm(BodyHabitus habitus, NeckEntry entry)
    {
        ArgumentNullException.ThrowIfNull(habitus);
        double mid = habitus.HeightCm + 3;
        double shift = LowEntryShiftMm * habitus.HeightScale;
        double midSd = MidNeckRelativeSpread * mid;
        double lowSd = LowNeckRelativeSpread * mid;
        return entry switch
        {
            NeckEntry.MidNeck => (mid, midSd),
            NeckEntry.LowNeck => (mid - shift, lowSd),
            // Mean and variance of an even two-part mixture: the mean of the variances plus the variance of the means.
            NeckEntry.Unknown => (
                mid - (shift / 2),
                Math.Sqrt((((midSd * midSd) + (lowSd * lowSd)) / 2) + (shift * shift / 4))),
            _ => throw new ArgumentOutOfRangeException(nameof(entry), entry, "Not a height of entry."),
        };
    }
}
