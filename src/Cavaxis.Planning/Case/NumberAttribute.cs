namespace Cavaxis.Planning.Case;

/// <summary>Bounds, unit and usual measuring error of a number in the case file.</summary>
/// <param name="low">Lowest accepted value.</param>
/// <param name="high">Highest accepted value.</param>
/// <param name="unit">Unit as people write it (UCUM where there is one).</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class NumberAttribute(double low, double high, string unit) : Attribute
{
    /// <summary>Lowest accepted value.</summary>
    public double Low { get; } = low;

    /// <summary>Highest accepted value.</summary>
    public double High { get; } = high;

    /// <summary>Unit as people write it.</summary>
    public string Unit { get; } = unit;

    /// <summary>Standard deviation of one measurement where the case file gives none; zero where the number is taken as exact.</summary>
    public double UsualSd { get; init; }
}
