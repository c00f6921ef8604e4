using Cavaxis.Course.Observations;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>Support began.</summary>
public sealed record SupportStarted : CourseEvent
{
    /// <summary>How the circuit is connected.</summary>
    public required RunningConfiguration Configuration { get; init; }

    /// <summary>Identifier of the pump in the catalogue.</summary>
    [Text(EventLimits.Name)]
    public string? Pump { get; init; }

    /// <summary>Identifier of the membrane lung in the catalogue.</summary>
    [Text(EventLimits.Name)]
    public string? MembraneLung { get; init; }

    /// <summary>First settings and readings; each quantity once.</summary>
    [Text(EventLimits.Readings)]
    public IReadOnlyList<Reading> Readings { get; init; } = [];

    /// <summary>Remark.</summary>
    [Text(EventLimits.Remark)]
    public string? Remark { get; init; }

    internal override void Check(FaultLedger ledger)
    {
        ReadingCheck.Of(Readings, "readings", ledger);
    }
}
