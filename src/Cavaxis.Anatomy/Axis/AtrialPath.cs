namespace Cavaxis.Anatomy.Axis;

/// <summary>
/// The way of a stiff cannula through the right atrium: it leaves the superior mouth along the SVC, enters the inferior mouth
/// along the IVC, and bends as little as it can between. For small slopes that is the cubic with those end tangents,
/// in each plane over the chord from SCAJ to ICAJ (t from 0 to 1, L the span):
/// y'(t) = a (1 − 4t + 3t²) + b (3t² − 2t), a and b the slopes of SVC and IVC against the chord. The way is longer than the
/// chord by L/30 (2a² − ab + 2b²) per plane, to second order in the slopes.
/// The SVC and IVC axes lean by half the bend to either side of their bisector; the chord leans against the bisector by
/// φ = asin(offset/span). So a = tan(−bend/2 − φ) and b = tan(bend/2 − φ).
/// Frontal slopes are positive towards the patient's right on the way down, sagittal ones towards the back, as the bends are.
/// </summary>
/// <param name="SpanMm">Chord from SCAJ to ICAJ, mm.</param>
/// <param name="FrontalStart">Slope of the SVC against the chord, frontal plane.</param>
/// <param name="FrontalEnd">Slope of the IVC against the chord, frontal plane.</param>
/// <param name="SagittalStart">Slope of the SVC against the chord, sagittal plane.</param>
/// <param name="SagittalEnd">Slope of the IVC against the chord, sagittal plane.</param>
public readonly record struct AtrialPath(
    double SpanMm, double FrontalStart, double FrontalEnd, double SagittalStart, double SagittalEnd)
{
    /// <summary>Direction of the tricuspid orifice from the line SCAJ → ICAJ: degrees from straight ahead towards the
    /// patient's left. The mean en-face view is LAO 54, CAUD 15 (44 patients; Xiong, EIJ-D-19-00618).</summary>
    public const double TricuspidAzimuthDeg = 54;

    private const double RadiansPerDegree = Math.PI / 180;

    /// <summary>Length of the whole way along the curve, mm.</summary>
    public double TotalLengthMm =>
        SpanMm + Excess(SpanMm, FrontalStart, FrontalEnd) + Excess(SpanMm, SagittalStart, SagittalEnd);

    /// <summary>The way for given angles.</summary>
    /// <param name="spanMm">Chord from SCAJ to ICAJ, mm.</param>
    /// <param name="bendFrontalDeg">Angle from the SVC to the IVC axis, frontal plane, degrees.</param>
    /// <param name="bendSagittalDeg">The same in the sagittal plane.</param>
    /// <param name="offsetMm">Sideways distance of the inferior mouth from the superior one, square to the bisector of
    /// the axes, frontal plane, mm; less than the span.</param>
    /// <returns>The way.</returns>
    public static AtrialPath Of(double spanMm, double bendFrontalDeg, double bendSagittalDeg, double offsetMm)
    {
        (double frontalStart, double frontalEnd) = EndSlopes(bendFrontalDeg, offsetMm, spanMm);
        (double sagittalStart, double sagittalEnd) = EndSlopes(bendSagittalDeg, 0, spanMm);
        return new AtrialPath(spanMm, frontalStart, frontalEnd, sagittalStart, sagittalEnd);
    }

    /// <summary>Tangent of the cannula's tilt against the chord, in one plane.</summary>
    /// <param name="fraction">Place along the chord, 0 at SCAJ, 1 at ICAJ.</param>
    /// <param name="bendDeg">Angle from the SVC to the IVC axis in that plane, degrees.</param>
    /// <param name="offsetMm">Offset of the inferior mouth in that plane, mm; 0 in the sagittal plane.</param>
    /// <param name="spanMm">Chord, mm.</param>
    /// <returns>The slope; positive towards the side that a positive bend turns to.</returns>
    public static double SlopeAt(double fraction, double bendDeg, double offsetMm, double spanMm)
    {
        (double start, double end) = EndSlopes(bendDeg, offsetMm, spanMm);
        return Slope(fraction, start, end);
    }

    /// <summary>Length of the way along the curve.</summary>
    /// <param name="spanMm">Chord, mm.</param>
    /// <param name="bendFrontalDeg">Frontal bend, degrees.</param>
    /// <param name="bendSagittalDeg">Sagittal bend, degrees.</param>
    /// <param name="offsetMm">Frontal offset of the mouths, mm.</param>
    /// <returns>Length, mm.</returns>
    public static double LengthMm(double spanMm, double bendFrontalDeg, double bendSagittalDeg, double offsetMm) =>
        Of(spanMm, bendFrontalDeg, bendSagittalDeg, offsetMm).TotalLengthMm;

    /// <summary>The tilt in a vertical plane between the two.</summary>
    /// <param name="frontalSlope">Frontal slope, positive to the patient's right.</param>
    /// <param name="sagittalSlope">Sagittal slope, positive to the back.</param>
    /// <param name="azimuthDeg">Direction of the plane: 0 straight ahead, 90 the patient's left.</param>
    /// <returns>Slope of the descending cannula towards that direction.</returns>
    public static double SlopeTowards(double frontalSlope, double sagittalSlope, double azimuthDeg)
    {
        (double sin, double cos) = Math.SinCos(azimuthDeg * RadiansPerDegree);
        return -(frontalSlope * sin) - (sagittalSlope * cos);
    }

    /// <summary>
    /// Where a jet leaving square to the cannula meets a plane at a distance: a cannula leaning towards the target on
    /// its way down throws the jet upwards.
    /// </summary>
    /// <param name="slopeTowardsTarget">Slope of the descending cannula towards the target.</param>
    /// <param name="distanceMm">Distance of the target from the cannula, mm.</param>
    /// <returns>Shift of the point of impact along the axis against the hole, mm; positive towards the feet.</returns>
    public static double AimShiftMm(double slopeTowardsTarget, double distanceMm) => -slopeTowardsTarget * distanceMm;

    /// <summary>Tilt against the chord, both planes together.</summary>
    /// <param name="fraction">Place along the chord.</param>
    /// <returns>Angle, degrees.</returns>
    public double TiltAt(double fraction)
    {
        double frontal = Slope(fraction, FrontalStart, FrontalEnd);
        double sagittal = Slope(fraction, SagittalStart, SagittalEnd);
        return Math.Atan(Math.Sqrt((frontal * frontal) + (sagittal * sagittal))) / RadiansPerDegree;
    }

    /// <summary>Tilt in the frontal plane.</summary>
    /// <param name="fraction">Place along the chord.</param>
    /// <returns>Angle, degrees, positive to the patient's right.</returns>
    public double FrontalTiltAt(double fraction) =>
        Math.Atan(Slope(fraction, FrontalStart, FrontalEnd)) / RadiansPerDegree;

    /// <summary>Tilt in the sagittal plane.</summary>
    /// <param name="fraction">Place along the chord.</param>
    /// <returns>Angle, degrees, positive to the back.</returns>
    public double SagittalTiltAt(double fraction) =>
        Math.Atan(Slope(fraction, SagittalStart, SagittalEnd)) / RadiansPerDegree;

    /// <summary>Length of the way from SCAJ down to a place.</summary>
    /// <param name="fraction">Place along the chord.</param>
    /// <returns>Arc length, mm.</returns>
    public double ArcMm(double fraction) => SpanMm * (fraction
        + HalfSquareIntegral(fraction, FrontalStart, FrontalEnd)
        + HalfSquareIntegral(fraction, SagittalStart, SagittalEnd));

    /// <summary>How far the way lies beside the chord.</summary>
    /// <param name="fraction">Place along the chord.</param>
    /// <returns>Frontal offset to the patient's right and sagittal offset to the back, mm, square to the chord.</returns>
    public (double FrontalMm, double SagittalMm) BesideChordMm(double fraction)
    {
        double early = fraction * (1 - fraction) * (1 - fraction);
        double late = fraction * fraction * (fraction - 1);
        return (SpanMm * ((early * FrontalStart) + (late * FrontalEnd)), SpanMm * ((early * SagittalStart) + (late * SagittalEnd)));
    }

    /// <summary>Slopes of the way against the chord.</summary>
    /// <param name="fraction">Place along the chord.</param>
    /// <returns>Frontal slope to the patient's right and sagittal slope to the back.</returns>
    public (double Frontal, double Sagittal) SlopesAt(double fraction) =>
        (Slope(fraction, FrontalStart, FrontalEnd), Slope(fraction, SagittalStart, SagittalEnd));

    // tan(−half − φ) and tan(half − φ) by the addition theorem: this sits in the innermost loop over anatomies.
    private static (double Start, double End) EndSlopes(double bendDeg, double offsetMm, double spanMm)
    {
        double half = Math.Tan(bendDeg * (RadiansPerDegree / 2));
        double chord = offsetMm / Math.Sqrt((spanMm * spanMm) - (offsetMm * offsetMm));
        double product = half * chord;
        return (-(half + chord) / (1 - product), (half - chord) / (1 + product));
    }

    private static double Slope(double t, double start, double end) =>
        (start * (1 + (t * ((3 * t) - 4)))) + (end * t * ((3 * t) - 2));

    private static double Excess(double spanMm, double a, double b) =>
        spanMm / 30 * ((2 * a * a) - (a * b) + (2 * b * b));

    // ½ ∫₀ᵗ y'², y' = a + q t + r t².
    private static double HalfSquareIntegral(double t, double a, double b)
    {
        double q = (-4 * a) - (2 * b);
        double r = 3 * (a + b);
        double cubicTerm = ((q * q) + (2 * a * r)) / 3;
        return t * ((a * a) + (t * ((a * q) + (t * (cubicTerm + (t * ((q * r / 2) + (t * r * r / 5)))))))) / 2;
    }
}
