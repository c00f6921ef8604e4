using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>Where a tip or a port lies against a landmark of the cavo-atrial axis.</summary>
public sealed record PortPlace
{
    /// <summary>The landmark.</summary>
    public required CavalLandmark Landmark { get; init; }

    /// <summary>Distance along the axis, cm; positive from the landmark towards the feet, negative towards the head.</summary>
    [Number(-40, 40, "cm")]
    public required double OffsetCm { get; init; }

    /// <summary>Standard deviation of that distance, cm.</summary>
    [Number(0, 20, "cm")]
    public double? SdCm { get; init; }

    /// <summary>True where it was not seen but follows from what was seen and the dimensions of the cannula.</summary>
    public bool IsInferred { get; init; }
}
