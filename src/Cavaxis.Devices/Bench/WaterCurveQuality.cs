namespace Cavaxis.Devices.Bench;

/// <summary>How well a fitted curve follows its bench points.</summary>
/// <param name="PointCount">Number of points.</param>
/// <param name="Order">Order of the polynomial of ln Eu in ln Re.</param>
/// <param name="RelativeSd">Relative standard deviation of the points about the curve.</param>
/// <param name="LargestRelativeResidual">Largest relative distance of a point from the curve.</param>
/// <param name="LowestFlowLPerMin">Lowest flow on the bench.</param>
/// <param name="HighestFlowLPerMin">Highest flow on the bench.</param>
public sealed record WaterCurveQuality(
    int PointCount,
    int Order,
    double RelativeSd,
    double LargestRelativeResidual,
    double LowestFlowLPerMin,
    double HighestFlowLPerMin);
