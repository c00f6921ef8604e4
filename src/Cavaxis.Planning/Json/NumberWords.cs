using System.Globalization;
using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Json;

/// <summary>Numbers, units and ranges in words for faults and tables.</summary>
public static class NumberWords
{
    /// <summary>A number, shortest form that reads back the same.</summary>
    /// <param name="value">The number.</param>
    public static string Of(double value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>A UCUM unit as it is written at the bedside; empty for the unit 1.</summary>
    /// <param name="ucum">The unit.</param>
    public static string Unit(string ucum) => ucum switch
    {
        "1" => string.Empty,
        "mm[Hg]" => "mmHg",
        "Cel" => "°C",
        "a" => "years",
        "L/min/m2" => "L/min/m²",
        _ => ucum,
    };

    /// <summary>Such as "40 to 230 cm".</summary>
    /// <param name="low">Lowest value.</param>
    /// <param name="high">Highest value.</param>
    /// <param name="unit">Unit in UCUM.</param>
    public static string Range(double low, double high, string unit) =>
        low.Equals(high) ? Of(low) : $"{Of(low)} to {Of(high)} {Unit(unit)}".TrimEnd();

    /// <summary>Such as "40 to 230 cm".</summary>
    /// <param name="number">Bounds and unit.</param>
    public static string Range(NumberAttribute number) => Range(number.Low, number.High, number.Unit);

    /// <summary>Such as "a number from 40 to 230 cm".</summary>
    /// <param name="number">Bounds and unit.</param>
    public static string Accepted(NumberAttribute number) =>
        number.Low.Equals(number.High) ? $"the number {Of(number.Low)}" : $"a number from {Range(number)}";
}
