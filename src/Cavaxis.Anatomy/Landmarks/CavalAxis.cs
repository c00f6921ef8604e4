using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Sampling;
using static Cavaxis.Anatomy.Axis.AxisDimension;

namespace Cavaxis.Anatomy.Landmarks;

/// <summary>
/// One anatomy as a line: arc length z in mm along the veins, 0 at the SCAJ, positive towards the feet. Within the
/// atrium the arc length is that of the stiff way, <see cref="AtrialPath"/>.
/// </summary>
public sealed class CavalAxis
{
    private readonly double[] positions;

    private CavalAxis(Func<AxisDimension, double> value)
    {
        Atrium = AtrialPath.Of(value(AtrialSpan), value(CavalBendFrontal), value(CavalBendSagittal), value(MouthOffset));
        double icaj = Atrium.TotalLengthMm;
        double renal = icaj + value(IcajToRenalVein);
        double rightGroin = icaj + value(RightGroinSkinToIcaj);
        positions =
        [
            -value(RightNeckSkinToScaj),
            -(value(RightNeckSkinToScaj) + value(LeftNeckExtra)),
            -value(SvcLength),
            0,
            Atrium.ArcMm(value(TricuspidFraction)),
            icaj,
            icaj + value(IcajToHepaticVein),
            renal,
            renal + value(RenalVeinToIliacConfluence),
            rightGroin,
            rightGroin + value(LeftGroinExtra),
        ];
    }

    /// <summary>The stiff way through the atrium.</summary>
    public AtrialPath Atrium { get; }

    /// <summary>Position of a landmark.</summary>
    /// <param name="landmark">The landmark.</param>
    /// <returns>Arc length from the SCAJ, mm, positive towards the feet.</returns>
    public double this[CavalLandmark landmark] => positions[(int)landmark];

    /// <summary>The anatomy at the medians of a belief.</summary>
    /// <param name="distribution">The belief.</param>
    /// <returns>The axis.</returns>
    public static CavalAxis OfMedians(AxisDistribution distribution)
    {
        ArgumentNullException.ThrowIfNull(distribution);
        return new CavalAxis(distribution.Median);
    }

    /// <summary>One sampled anatomy.</summary>
    /// <param name="samples">The samples.</param>
    /// <param name="index">Which one.</param>
    /// <returns>The axis.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such sample.</exception>
    public static CavalAxis OfSample(AxisSamples samples, int index)
    {
        ArgumentNullException.ThrowIfNull(samples);
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, samples.Count);
        return new CavalAxis(dimension => samples[dimension][index]);
    }

    /// <summary>One shape.</summary>
    /// <param name="value">Value of each dimension, mm, degrees or 1.</param>
    /// <returns>The axis.</returns>
    internal static CavalAxis Of(Func<AxisDimension, double> value) => new(value);

    /// <summary>Position of a tip advanced from the neck.</summary>
    /// <param name="side">Side of the neck.</param>
    /// <param name="depthMm">Depth from the skin along the veins, mm.</param>
    /// <returns>Arc length from the SCAJ, mm.</returns>
    public double FromNeck(BodySide side, double depthMm) =>
        this[side == BodySide.Right ? CavalLandmark.RightNeckSkin : CavalLandmark.LeftNeckSkin] + depthMm;

    /// <summary>Position of a tip advanced from the groin.</summary>
    /// <param name="side">Side of the groin.</param>
    /// <param name="depthMm">Depth from the skin along the veins, mm.</param>
    /// <returns>Arc length from the SCAJ, mm.</returns>
    public double FromGroin(BodySide side, double depthMm) =>
        this[side == BodySide.Right ? CavalLandmark.RightGroinSkin : CavalLandmark.LeftGroinSkin] - depthMm;
}
