namespace Cavaxis.Course.Explanations.Trends;

/// <summary>One reading of a series.</summary>
/// <param name="Hour">Time, hours from any fixed moment.</param>
/// <param name="Value">Value in the unit of the quantity.</param>
/// <param name="Sd">Standard deviation of the reading.</param>
public readonly record struct TimedReading(double Hour, double Value, double Sd);
