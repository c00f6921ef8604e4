namespace Cavaxis.Imaging.Echo;

/// <summary>Where a point lies beside a curve.</summary>
/// <param name="Arc">Length along the curve to its nearest point, mm.</param>
/// <param name="A">Part along the frame's normal, mm.</param>
/// <param name="B">Part along the frame's binormal, mm.</param>
internal readonly record struct CurvePlace(double Arc, double A, double B)
{
    /// <summary>Distance from the curve, mm.</summary>
    public double Distance => Math.Sqrt((A * A) + (B * B));
}
