namespace Cavaxis.Imaging.Tomography;

/// <summary>How far a traced axis can be trusted, in numbers that were held against limits.</summary>
/// <param name="WayHu">Mean value along the way, HU.</param>
/// <param name="AwayShare">Share of the way whose value is unlike both seeds and anything between them.</param>
/// <param name="ClosedShare">Share of the vessel, atrium apart, with a closed wall.</param>
/// <param name="LongestOpenMm">Longest stretch of vessel, atrium apart, without a closed wall, mm.</param>
/// <param name="ContrastToNoise">Median step at the wall over the spread inside; of the vein, above or below the atrium, where it is less.</param>
/// <param name="Roughness">Median change of the diameter between sections 4 mm apart, as a share of it, before any smoothing.</param>
/// <param name="RepeatMm">Distance between the vessel's centrelines traced from either end on shifted grids, 90th percentile, mm.</param>
public sealed record TraceQuality(
    double WayHu, double AwayShare, double ClosedShare, double LongestOpenMm, double ContrastToNoise, double Roughness, double RepeatMm);
