namespace Cavaxis.Reports.Charts;

/// <summary>A line across the chart at one value.</summary>
/// <param name="Words">What it means, written at its end.</param>
/// <param name="Value">The value, in the unit of its axis.</param>
/// <param name="Kind">Limit, caution or target.</param>
/// <param name="OnX">True for an upright line at a value of the horizontal axis.</param>
public sealed record Threshold(string Words, double Value, ThresholdKind Kind, bool OnX = false);
