using Cavaxis.Anatomy.Axis;

namespace Cavaxis.Planning.Information;

/// <summary>What one measurement that is still missing would do for the plan.</summary>
/// <param name="Dimension">What to measure.</param>
/// <param name="How">How it is usually measured, in words.</param>
/// <param name="MeasurementSd">Error assumed for that measurement, in the dimension's unit.</param>
/// <param name="Unit">Unit of the error.</param>
/// <param name="FitVarianceNow">Variance of the yes-or-no question "can every port be brought into its zone", p(1 − p), as things stand.</param>
/// <param name="FitVarianceAfter">The same, expected after the measurement.</param>
/// <param name="FitNarrowing">Share of that variance that the measurement removes, 0 to 1.</param>
/// <param name="DepthSdNowCm">Standard deviation of the suitable depth as things stand, cm.</param>
/// <param name="DepthSdAfterCm">The same, expected after the measurement, cm.</param>
/// <param name="DepthNarrowing">Share of the depth's variance that the measurement removes, 0 to 1.</param>
public sealed record MeasurementValue(
    AxisDimension Dimension,
    string How,
    double MeasurementSd,
    string Unit,
    double FitVarianceNow,
    double FitVarianceAfter,
    double FitNarrowing,
    double DepthSdNowCm,
    double DepthSdAfterCm,
    double DepthNarrowing);
