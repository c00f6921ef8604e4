using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Doppler;

/// <summary>The angle between beam and flow. A speed read without correction is v cos θ; corrected by 1/cos θ it takes over the error of the angle: σ(v)/v = tan θ σ(θ).</summary>
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

    /// <summary>Relative standard deviation that the correction adds. At angles near zero the tangent vanishes and the second order σ²/2 is what remains.</summary>
    public double RelativeSd
    {
        get
        {
            double sd = SdDegrees * (Math.PI / 180);
            double first = Math.Tan(Degrees * (Math.PI / 180)) * sd;
            return Math.Sqrt((first * first) + (sd * sd * sd * sd / 2));
        }
    }

    /// <summary>How much too low a speed is read at an angle without correction: 1 − cos θ.</summary>
    /// <param name="degrees">The angle, degrees.</param>
    /// <returns>Share of the speed.</returns>
    public static double UnreadShare(double degrees) => 1 - Math.Cos(degrees * (Math.PI / 180));
}
