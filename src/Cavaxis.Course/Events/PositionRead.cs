using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>The position of a cannula was read.</summary>
public sealed record PositionRead : CourseEvent
{
    /// <summary>Name of the cannula in this record, such as "drainage"; unique among those that lie.</summary>
    [Text(EventLimits.Name)]
    public required string Cannula { get; init; }

    /// <summary>Depth at the skin, cm.</summary>
    [Number(0, 70, "cm")]
    public double? DepthCm { get; init; }

    /// <summary>Turn of a dual-lumen return port away from the tricuspid valve, degrees; positive towards the back of the patient.</summary>
    [Number(-180, 180, "deg")]
    public double? TurnDeg { get; init; }

    /// <summary>Where the tip lies.</summary>
    public PortPlace? Tip { get; init; }

    /// <summary>Where the return port lies.</summary>
    public PortPlace? ReturnPort { get; init; }

    /// <summary>Where the first drainage hole lies.</summary>
    public PortPlace? FirstHole { get; init; }

    /// <summary>How it was seen.</summary>
    public required PositionSight SeenBy { get; init; }

    /// <summary>The view, in words.</summary>
    [Text(EventLimits.Line)]
    public string? View { get; init; }

    /// <summary>The image.</summary>
    public ImageReference? Image { get; init; }

    /// <summary>Remark.</summary>
    [Text(EventLimits.Remark)]
    public string? Remark { get; init; }

    internal override void Check(FaultLedger ledger)
    {
        if (DepthCm is null && TurnDeg is null && Tip is null && ReturnPort is null && FirstHole is null)
        {
            EventFault.Missing(ledger, "depthCm", "a depth, a turn, or where tip, port or first hole lie", "Write down what was read.");
        }
    }
}
