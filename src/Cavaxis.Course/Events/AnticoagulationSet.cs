using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>Anticoagulation was begun, changed or stopped.</summary>
public sealed record AnticoagulationSet : CourseEvent
{
    /// <summary>What.</summary>
    public required AnticoagulationAgent Agent { get; init; }

    /// <summary>Dose; in the unit of the dose.</summary>
    [Number(0, 100000, "unit of the dose")]
    public double? Dose { get; init; }

    /// <summary>Unit of the dose, such as U/h.</summary>
    [Text(EventLimits.Name)]
    public string? DoseUnit { get; init; }

    /// <summary>Ranges to keep.</summary>
    [Text(8)]
    public IReadOnlyList<TargetRange> Targets { get; init; } = [];

    /// <summary>Why.</summary>
    [Text(EventLimits.Remark)]
    public string? Reason { get; init; }

    internal override void Check(FaultLedger ledger)
    {
        if (Dose is null != DoseUnit is null)
        {
            EventFault.Missing(ledger, Dose is null ? "dose" : "doseUnit", "a dose with its unit, or neither", "Write both or leave both out.");
        }

        for (int i = 0; i < Targets.Count; i++)
        {
            if (Targets[i].Low > Targets[i].High)
            {
                EventFault.Contradiction(ledger, FormattableString.Invariant($"targets[{i}].low"), FormattableString.Invariant($"{Targets[i].Low}"), FormattableString.Invariant($"at most {Targets[i].High}, its upper end"), "Exchange the two.");
            }
        }
    }
}
