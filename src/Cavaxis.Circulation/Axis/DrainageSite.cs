namespace Cavaxis.Circulation.Axis;

/// <summary>A group of drainage holes.</summary>
/// <param name="PositionMm">Middle of the group, mm along the axis.</param>
/// <param name="HalfSpanMm">Half its length.</param>
/// <param name="Share">Share of the drainage flow through it.</param>
public readonly record struct DrainageSite(double PositionMm, double HalfSpanMm, double Share);
