using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Quantities;

namespace Cavaxis.Anatomy.Population;

/// <summary>
/// Right jugular skin to SCAJ. Adults: height/10 + 0.3 cm, SD 1.8 cm, for a mid-neck entry. Children: 1.7 + 0.07 × height cm
/// (Yoon 2006, 40–140 cm, ultrasound from the oesophagus). Between 140 and 165 cm, and between 14 and 18 years, the two are
/// blended by whichever is further grown, so that the depth is continuous.
/// </summary>
public static class NeckDepthLaw
{
    /// <summary>How much nearer the SCAJ a low entry lies, mm, in the reference adult.</summary>
    public const double LowEntryShiftMm = 25;

    /// <summary>Relative spread at a mid-neck entry: 18 mm of 173 mm.</summary>
    public const double MidNeckRelativeSpread = 18.0 / 173.0;

    /// <summary>Relative spread at a low entry, referred to the mid-neck depth: the clavicle fixes the height better (15 mm).</summary>
    public const double LowNeckRelativeSpread = 15.0 / 173.0;

    /// <summary>Where the adult law comes from.</summary>
    public static Source AdultSource { get; } = new(
        "height/10 + 0.3 cm, SD 1.8 cm: tips against the carina with the height formula (Peres 1990, 400 and 180 adults) plus carina to SCAJ", Certainty.Derived);

    /// <summary>Where the child law comes from.</summary>
    public static Source ChildSource { get; } = new(
        "Yoon 2006, Acta Anaesthesiol Scand 50:355: 1.7 + 0.07 x height, 60 children of 40 to 140 cm", Certainty.SeenSecondHand);

    /// <summary>Depth at a mid-neck entry.</summary>
    /// <param name="habitus">The patient.</param>
    /// <returns>Median depth, mm.</returns>
    public static double MidNeckMm(BodyHabitus habitus)
    {
        ArgumentNullException.ThrowIfNull(habitus);
        double adult = habitus.HeightCm + 3;
        double child = 17 + (0.7 * habitus.HeightCm);
        double grown = Math.Max(Ramp(habitus.HeightCm, 140, 165), Ramp(habitus.AgeYears, 14, BodyHabitus.AdultAgeYears));
        return (grown * adult) + ((1 - grown) * child);
    }

    /// <summary>Depth and spread at a given height of entry; the even mixture where it is not known.</summary>
    /// <param name="habitus">The patient.</param>
    /// <param name="entry">Height of the entry.</param>
    /// <returns>Middle and standard deviation, mm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not an entry.</exception>
    public static (double MiddleMm, double SdMm) DepthMm(BodyHabitus habitus, NeckEntry entry)
    {
        double mid = MidNeckMm(habitus);
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

    private static double Ramp(double value, double from, double to)
    {
        double t = Math.Clamp((value - from) / (to - from), 0, 1);
        return t * t * (3 - (2 * t));
    }
}
