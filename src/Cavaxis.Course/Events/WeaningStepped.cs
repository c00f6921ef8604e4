using Cavaxis.Course.Observations;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>A step of a trial of weaning.</summary>
public sealed record WeaningStepped : CourseEvent
{
    /// <summary>Number of the entry that began the trial.</summary>
    [Number(1, int.MaxValue, "1")]
    public required int TrialEntry { get; init; }

    /// <summary>Pump flow at this step, L/min; negative where it runs backwards.</summary>
    [Number(-3, 10, "L/min")]
    public double? FlowLPerMin { get; init; }

    /// <summary>Sweep gas at this step, L/min; 0 where it is off.</summary>
    [Number(0, 20, "L/min")]
    public double? SweepLPerMin { get; init; }

    /// <summary>Oxygen fraction of the sweep gas.</summary>
    [Number(0.21, 1, "1")]
    public double? SweepOxygenFraction { get; init; }

    /// <summary>How long the step was held before the readings, minutes.</summary>
    [Number(0, 10080, "min")]
    public double? MinutesHeld { get; init; }

    /// <summary>What was read; each quantity once.</summary>
    [Text(EventLimits.Readings)]
    public IReadOnlyList<Reading> Readings { get; init; } = [];

    /// <summary>Remark.</summary>
    [Text(EventLimits.Remark)]
    public string? Remark { get; init; }

    internal override void Check(FaultLedger ledger)
    {
        ReadingCheck.Of(Readings, "readings", ledger);
        if (FlowLPerMin is null && SweepLPerMin is null && SweepOxygenFraction is null)
        {
            EventFault.Missing(ledger, "flowLPerMin", "pump flow, sweep gas or its oxygen at this step", "Write down what was changed.");
        }
    }
}
