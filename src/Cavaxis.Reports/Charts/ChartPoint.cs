namespace Cavaxis.Reports.Charts;

/// <summary>One value of a series.</summary>
/// <param name="X">Along the horizontal axis, in its unit.</param>
/// <param name="Y">Along the vertical axis, in its unit.</param>
public readonly record struct ChartPoint(double X, double Y);
