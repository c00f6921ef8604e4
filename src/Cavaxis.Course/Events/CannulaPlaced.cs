using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;

namespace Cavaxis.Course.Events;

/// <summary>A cannula was placed.</summary>
public sealed record CannulaPlaced : CourseEvent
{
    /// <summary>Name of the cannula in this record, such as "drainage"; unique among those that lie.</summary>
    [Text(EventLimits.Name)]
    public required string Cannula { get; init; }

    /// <summary>What it does.</summary>
    public required CannulaRole Role { get; init; }

    /// <summary>Identifier in the catalogue.</summary>
    [Text(EventLimits.Name)]
    public string? Device { get; init; }

    /// <summary>Size, French.</summary>
    [Number(3, 40, "Fr")]
    public double? OuterDiameterFrench { get; init; }

    /// <summary>Vessel it enters.</summary>
    public AccessRoute? Route { get; init; }

    /// <summary>The patient's own side.</summary>
    public BodySide? Side { get; init; }

    /// <summary>Depth at the skin, cm.</summary>
    [Number(0, 70, "cm")]
    public double? DepthCm { get; init; }

    /// <summary>Turn of a dual-lumen return port away from the tricuspid valve, degrees; positive towards the back of the patient.</summary>
    [Number(-180, 180, "deg")]
    public double? TurnDeg { get; init; }

    /// <summary>Remark.</summary>
    [Text(EventLimits.Remark)]
    public string? Remark { get; init; }
}
