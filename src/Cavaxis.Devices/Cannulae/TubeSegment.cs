namespace Cavaxis.Devices.Cannulae;

/// <summary>A straight stretch of one lumen; segments run from the hub to the tip.</summary>
/// <param name="LengthMm">Length along the cannula.</param>
/// <param name="InnerDiameterMm">Inner diameter; for a lumen that is not round, the hydraulic diameter (four areas over wetted perimeter).</param>
/// <param name="AreaMm2">Cross-section of the lumen. For a round lumen π d² / 4.</param>
public sealed record TubeSegment(double LengthMm, double InnerDiameterMm, double AreaMm2)
{
    /// <summary>A round stretch.</summary>
    /// <param name="lengthMm">Length along the cannula.</param>
    /// <param name="innerDiameterMm">Inner diameter.</param>
    /// <returns>The segment with its area.</returns>
    public static TubeSegment Round(double lengthMm, double innerDiameterMm) =>
        new(lengthMm, innerDiameterMm, Math.PI * innerDiameterMm * innerDiameterMm / 4);
}
