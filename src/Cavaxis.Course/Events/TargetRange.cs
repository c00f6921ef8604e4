using Cavaxis.Course.Observations;
using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>A range to keep a quantity in.</summary>
public sealed record TargetRange
{
    /// <summary>The quantity.</summary>
    public required ObservedQuantity Quantity { get; init; }

    /// <summary>Lower end.</summary>
    [Number(-1000, 20000, "unit of the quantity")]
    public required double Low { get; init; }

    /// <summary>Upper end.</summary>
    [Number(-1000, 20000, "unit of the quantity")]
    public required double High { get; init; }
}
