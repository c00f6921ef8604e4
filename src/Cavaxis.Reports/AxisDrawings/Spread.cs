using Cavaxis.Quantities;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>A number with its 5 to 95 % interval, mm.</summary>
/// <param name="Median">Middle value, mm.</param>
/// <param name="Low">Fifth percentile, mm.</param>
/// <param name="High">Ninety-fifth percentile, mm.</param>
public readonly record struct Spread(double Median, double Low, double High)
{
    /// <summary>A number without uncertainty.</summary>
    /// <param name="value">The number, mm.</param>
    /// <returns>The spread of width zero.</returns>
    public static Spread Exact(double value) => new(value, value, value);

    /// <summary>The spread of an estimate in mm.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <returns>Its value and interval.</returns>
    public static Spread Of(Estimate estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        return new(estimate.Value, estimate.Low, estimate.High);
    }
}
