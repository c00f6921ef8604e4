using Cavaxis.Course.Observations;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>A trial of weaning began.</summary>
public sealed record WeaningStarted : CourseEvent
{
    /// <summary>How support is taken back.</summary>
    public required WeaningMethod Method { get; init; }

    /// <summary>How the circuit was connected; null where it stands in the record.</summary>
    public RunningConfiguration? Configuration { get; init; }

    /// <summary>What was read before; each quantity once.</summary>
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
