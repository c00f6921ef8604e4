namespace Cavaxis.Circulation.Axis;

/// <summary>One group of drainage holes on the axis.</summary>
/// <param name="PositionMm">Middle of the group: arc length from the superior cavo-atrial junction, mm, positive to the feet.</param>
/// <param name="HalfSpanMm">Half the length of the group, mm, not negative.</param>
/// <param name="Share">Its share of the drainage flow; shares are taken relative to their sum.</param>
public readonly record struct DrainageSite(double PositionMm, double HalfSpanMm, double Share);
