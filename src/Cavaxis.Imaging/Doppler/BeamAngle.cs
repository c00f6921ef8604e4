using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Doppler;

/// <summary>The angle between beam and flow. A speed read without correction is v cos θ; corrected by 1/cos θ it takes over the error of the angle, in first order σ(v)/v = tan θ σ(θ).</summary>
public sealed record BeamAngle
{
    /// <summary>Largest angle that is corrected: beyond it small errors of the angle make large ones of the speed.</summary>
    public const double LargestDeg = 60;

    /// <summary>An angle.</summary>
    /// <param name="degrees">0 to <see cref="LargestDeg"/>.</param>
    /// <param name="sdDegrees">Its standard deviation, 0 to 15.</param>
    /// <exception cref="InputFaultException">Out of range.</exception>
    public BeamAngle(double degrees, double sdDegrees)
    {
        Degrees = Require.InRange(degrees, 0, LargestDeg, "angleDeg", "A speed is not corrected beyond 60 degrees: turn the probe, or read it without correction as a lower bound.");
        SdDegrees = Require.InRange(sdDegrees, 0, 15, "angleSdDeg", "Give the standard deviation of the angle in degrees.");
    }

    /// <summary>Why 60 degrees.</summary>
    public static Source LargestSource { get; } = new("course of vascular ultrasound: insonation angle of 60 degrees or less; string phantom at 100 cm/s read 120, 124 and 135 at 45, 50 and 60 degrees", Certainty.Seen);

    /// <summary>The angle, degrees.</summary>
    public double Degrees { get; }

    /// <summary>Its standard deviation, degrees.</summary>
    public double SdDegrees { get; }

    /// <summary>What a speed is multiplied by: 1/cos θ.</summary>
    public double Factor => 1 / Math.Cos(Degrees * (Math.PI / 180));

    /// <summary>
    /// Relative standard deviation that the correction adds, to the fourth power of the angle's own (t = tan θ): t² σ² + ((1 + 2t²)²/2 + t² (5 + 6t²)) σ⁴ is its square. The
    /// first term alone vanishes near zero degrees and is a tenth too small at 60.
    /// </summary>
    public double RelativeSd
    {
        get
        {
            double sd2 = SdDegrees * SdDegrees * (Math.PI / 180) * (Math.PI / 180);
            double tan = Math.Tan(Degrees * (Math.PI / 180));
            double t2 = tan * tan;
            return Math.Sqrt((t2 * sd2) + (sd2 * sd2 * (((1 + (2 * t2)) * (1 + (2 * t2)) / 2) + (t2 * (5 + (6 * t2))))));
        }
    }

    /// <summary>How much too low a speed is read at an angle without correction: 1 − cos θ.</summary>
    /// <param name="degrees">The angle, degrees.</param>
    /// <returns>Share of the speed.</returns>
    public static double UnreadShare(double degrees) => 1 - Math.Cos(degrees * (Math.PI / 180));
}
