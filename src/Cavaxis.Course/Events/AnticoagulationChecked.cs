using Cavaxis.Course.Observations;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>Anticoagulation was checked.</summary>
public sealed record AnticoagulationChecked : CourseEvent
{
    /// <summary>What was measured; each quantity once.</summary>
    [Text(EventLimits.Readings)]
    public required IReadOnlyList<Reading> Readings { get; init; }

    /// <summary>What was done about it.</summary>
    [Text(EventLimits.Remark)]
    public string? Action { get; init; }

    internal override void Check(FaultLedger ledger)
    {
        ReadingCheck.Of(Readings, "readings", ledger);
        if (Readings.Count == 0)
        {
            EventFault.Missing(ledger, "readings", "at least one reading", "Write down what was measured.");
        }
    }
}
