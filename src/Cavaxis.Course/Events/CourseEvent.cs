using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>
/// Particulars of something that happened to a patient on support. When it happened, who wrote it down and whether it was corrected stand with the
/// entry, not here. The kinds are closed: <see cref="CourseEventTable"/> lists them all.
/// </summary>
public abstract record CourseEvent
{
    private protected CourseEvent()
    {
    }

    /// <summary>Checks between fields that each are in order.</summary>
    /// <param name="ledger">Takes the faults.</param>
    internal virtual void Check(FaultLedger ledger)
    {
    }
}
