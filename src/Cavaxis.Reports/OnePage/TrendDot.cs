namespace Cavaxis.Reports.OnePage;

/// <summary>One reading in a small trend.</summary>
/// <param name="HoursAgo">Hours before now, not negative.</param>
/// <param name="Value">Its value.</param>
/// <param name="Sd">Its standard deviation, in the same unit.</param>
public readonly record struct TrendDot(double HoursAgo, double Value, double Sd);
