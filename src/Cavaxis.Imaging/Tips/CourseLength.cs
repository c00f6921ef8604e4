using Cavaxis.Quantities;

namespace Cavaxis.Imaging.Tips;

/// <summary>How much longer or shorter a device's way through the atrium is than the axis.</summary>
public static class CourseLength
{
    /// <summary>
    /// How far a device along the free wall bulges, over the chord between the junctions. The body of the atrium has a radius of 0.23 of the chord in this project's lumen;
    /// a bulge by it makes an arc longer than its chord by 8/3 × 0.23² = 14 %.
    /// </summary>
    public const double BulgeShare = 0.23;

    /// <summary>Where the bulge comes from.</summary>
    public static Source BulgeSource { get; } = new("radius of the body of the right atrium in docs/models/lumen.md, over the span", Certainty.Assumption);

    /// <summary>Length of a shallow arc over its chord: 1 + 8/3 (h/c)², the first term of the exact series.</summary>
    /// <param name="riseShare">Rise over chord.</param>
    /// <returns>At least 1.</returns>
    public static double ArcOverChord(double riseShare) => 1 + (8.0 / 3 * riseShare * riseShare);

    /// <summary>Length of the device's way over that of the axis.</summary>
    /// <param name="curve">The axis.</param>
    /// <param name="course">The way.</param>
    /// <param name="uniform">Where between straight and wall an unknown way lies, 0 to 1.</param>
    /// <returns>The ratio.</returns>
    internal static double Ratio(AxisCurve curve, DeviceCourse course, double uniform)
    {
        double straight = curve.ChordMm / curve.AtriumMm;
        double wall = Math.Max(1, straight * ArcOverChord(BulgeShare));
        return course switch
        {
            DeviceCourse.Straight => straight,
            DeviceCourse.AlongAxis => 1,
            DeviceCourse.AlongWall => wall,
            _ => straight + (uniform * (wall - straight)),
        };
    }
}
