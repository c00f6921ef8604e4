using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>A cannula was moved.</summary>
public sealed record CannulaMoved : CourseEvent
{
    /// <summary>Name of the cannula in this record, such as "drainage"; unique among those that lie.</summary>
    [Text(EventLimits.Name)]
    public required string Cannula { get; init; }

    /// <summary>Depth at the skin before, cm.</summary>
    [Number(0, 70, "cm")]
    public double? FromDepthCm { get; init; }

    /// <summary>Depth at the skin after, cm.</summary>
    [Number(0, 70, "cm")]
    public double? DepthCm { get; init; }

    /// <summary>Turn after, degrees; positive towards the back of the patient.</summary>
    [Number(-180, 180, "deg")]
    public double? TurnDeg { get; init; }

    /// <summary>Why.</summary>
    [Text(EventLimits.Remark)]
    public required string Reason { get; init; }

    /// <summary>How the move was watched; null where it was not.</summary>
    public PositionSight? SeenBy { get; init; }

    /// <summary>Remark.</summary>
    [Text(EventLimits.Remark)]
    public string? Remark { get; init; }

    internal override void Check(FaultLedger ledger)
    {
        if (DepthCm is null && TurnDeg is null)
        {
            EventFault.Missing(ledger, "depthCm", "the depth or the turn after the move", "Write down where it lies now.");
        }
    }
}
