using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Observations;

/// <summary>One quantity as it was read.</summary>
public sealed record Reading
{
    /// <summary>What was read.</summary>
    public required ObservedQuantity Quantity { get; init; }

    /// <summary>The value in the unit of the quantity. The bounds here only frame those of the quantity.</summary>
    [Number(-1000, 20000, "unit of the quantity")]
    public required double Value { get; init; }

    /// <summary>Standard deviation of this reading; null where the usual one of <see cref="QuantityTable"/> holds.</summary>
    [Number(0, 20000, "unit of the quantity")]
    public double? Sd { get; init; }

    /// <summary>How it was read.</summary>
    [Text(200)]
    public string? Method { get; init; }

    /// <summary>Remark.</summary>
    [Text(1000)]
    public string? Remark { get; init; }

    /// <summary>A reading without method or remark.</summary>
    /// <param name="quantity">What was read.</param>
    /// <param name="value">The value in its unit.</param>
    /// <param name="sd">Standard deviation; null for the usual one.</param>
    /// <returns>The reading.</returns>
    public static Reading Of(ObservedQuantity quantity, double value, double? sd = null) => new() { Quantity = quantity, Value = value, Sd = sd };
}
