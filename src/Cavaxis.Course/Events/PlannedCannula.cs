using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;

namespace Cavaxis.Course.Events;

/// <summary>A cannula of the chosen plan.</summary>
public sealed record PlannedCannula
{
    /// <summary>What it does.</summary>
    public required CannulaRole Role { get; init; }

    /// <summary>Identifier in the catalogue.</summary>
    [Text(EventLimits.Name)]
    public required string Device { get; init; }

    /// <summary>Vessel it enters.</summary>
    public required AccessRoute Route { get; init; }

    /// <summary>The patient's own side.</summary>
    public required BodySide Side { get; init; }

    /// <summary>Planned depth from the skin, cm; null where it goes to its hub.</summary>
    [Number(0, 70, "cm")]
    public double? DepthCm { get; init; }

    /// <summary>Lower end of the depths that suit nine tenths of anatomies, cm.</summary>
    [Number(0, 70, "cm")]
    public double? DepthLowCm { get; init; }

    /// <summary>Upper end, cm.</summary>
    [Number(0, 70, "cm")]
    public double? DepthHighCm { get; init; }
}
