using Cavaxis.Course.Observations;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>Quantities were read at one time, which is the time of the entry.</summary>
public sealed record Observed : CourseEvent
{
    /// <summary>What was read; each quantity once.</summary>
    [Text(EventLimits.Readings)]
    public required IReadOnlyList<Reading> Readings { get; init; }

    /// <summary>The file they came from; null where they were written by hand.</summary>
    public ImportOrigin? Import { get; init; }

    /// <summary>Remark.</summary>
    [Text(EventLimits.Remark)]
    public string? Remark { get; init; }

    internal override void Check(FaultLedger ledger)
    {
        ReadingCheck.Of(Readings, "readings", ledger);
        if (Readings.Count == 0)
        {
            EventFault.Missing(ledger, "readings", "at least one reading", "Write down what was read.");
        }

        if (Import is not null)
        {
            EventFault.Hash(ledger, "import.fileSha256", Import.FileSha256);
        }
    }
}
