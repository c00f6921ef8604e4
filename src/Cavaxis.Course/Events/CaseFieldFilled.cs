using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>A field of the case that was filled with what was measured on an image: so the case page can say where its number comes from.</summary>
public sealed record CaseFieldFilled
{
    /// <summary>Path of the field in the case, such as <c>heart.lvotDiameterMm</c>.</summary>
    [Text(EventLimits.Line)]
    public required string Field { get; init; }

    /// <summary>The value, in the field's unit.</summary>
    [Number(-1000, 1000, "the field's unit")]
    public required double Value { get; init; }

    /// <summary>Its standard deviation, in the same unit.</summary>
    [Number(0, 1000, "the field's unit")]
    public double? Sd { get; init; }
}
