using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>A second opinion was asked of another centre.</summary>
public sealed record OpinionAsked : CourseEvent
{
    /// <summary>Identifier of the pack that was given out.</summary>
    [Text(EventLimits.Name)]
    public required string Pack { get; init; }

    /// <summary>SHA-256 of the pack in small hexadecimal.</summary>
    [Text(EventLimits.Hash)]
    public string? PackSha256 { get; init; }

    /// <summary>What was asked.</summary>
    [Text(EventLimits.Note)]
    public required string Question { get; init; }

    /// <summary>Whom, in words that name no one.</summary>
    [Text(EventLimits.Line)]
    public string? AskedOf { get; init; }

    internal override void Check(FaultLedger ledger)
    {
        if (PackSha256 is not null)
        {
            EventFault.Hash(ledger, "packSha256", PackSha256);
        }
    }
}
