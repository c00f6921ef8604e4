using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>The circuit was connected otherwise, or parts of it were exchanged.</summary>
public sealed record SupportChanged : CourseEvent
{
    /// <summary>How the circuit is connected.</summary>
    public required RunningConfiguration Configuration { get; init; }

    /// <summary>Identifier of the pump in the catalogue.</summary>
    [Text(EventLimits.Name)]
    public string? Pump { get; init; }

    /// <summary>Identifier of the membrane lung in the catalogue.</summary>
    [Text(EventLimits.Name)]
    public string? MembraneLung { get; init; }

    /// <summary>Why.</summary>
    [Text(EventLimits.Remark)]
    public required string Reason { get; init; }
}
