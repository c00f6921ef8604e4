using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>What an examination after support found.</summary>
public sealed record FollowUpFound : CourseEvent
{
    /// <summary>Key of the item that was planned; null where none was.</summary>
    [Text(EventLimits.Name)]
    public string? Item { get; init; }

    /// <summary>Veins that were looked at.</summary>
    [Text(EventLimits.Veins)]
    public IReadOnlyList<VeinFinding> Veins { get; init; } = [];

    /// <summary>What else was found.</summary>
    [Text(EventLimits.Remark)]
    public string? Finding { get; init; }

    /// <summary>What was begun or changed.</summary>
    [Text(EventLimits.Remark)]
    public string? Treatment { get; init; }

    /// <summary>The images.</summary>
    public ImageReference? Image { get; init; }

    internal override void Check(FaultLedger ledger)
    {
        if (Veins.Count == 0 && Finding is null)
        {
            EventFault.Missing(ledger, "veins", "veins that were looked at, or a finding", "Write down what was found.");
        }
    }
}
