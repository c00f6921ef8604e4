using System.Globalization;

namespace Cavaxis.Planning.Rapid;

/// <summary>What is known of a number: exact, between two ends, or at least so much. A clock that still runs gives the last.</summary>
/// <param name="Low">It is not less.</param>
/// <param name="High">It is not more; infinite where nothing bounds it.</param>
public readonly record struct NumberRange(double Low, double High)
{
    /// <summary>A known number.</summary>
    /// <param name="value">The number.</param>
    /// <returns>The range of that number alone.</returns>
    public static NumberRange Exactly(double value) => new(value, value);

    /// <summary>A number that can only grow from here.</summary>
    /// <param name="value">The least.</param>
    /// <returns>The range.</returns>
    public static NumberRange AtLeast(double value) => new(value, double.PositiveInfinity);

    /// <summary>In words with its unit.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>Such as "at least 40 min".</returns>
    public string Words(string unit) => Low.Equals(High)
        ? string.Create(CultureInfo.InvariantCulture, $"{Low:0.##} {unit}")
        : double.IsPositiveInfinity(High)
            ? string.Create(CultureInfo.InvariantCulture, $"at least {Low:0.##} {unit}")
            : string.Create(CultureInfo.InvariantCulture, $"{Low:0.#} to {High:0.#} {unit}");
}
