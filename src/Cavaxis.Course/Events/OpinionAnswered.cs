using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>Another centre answered.</summary>
public sealed record OpinionAnswered : CourseEvent
{
    /// <summary>Identifier of the pack that was answered.</summary>
    [Text(EventLimits.Name)]
    public required string Pack { get; init; }

    /// <summary>The answer.</summary>
    [Text(EventLimits.Note)]
    public required string Answer { get; init; }

    /// <summary>Who answered, in words.</summary>
    [Text(EventLimits.Line)]
    public string? AnsweredBy { get; init; }

    /// <summary>SHA-256 of the answer as it came in small hexadecimal, by which the same one coming twice is known.</summary>
    [Text(EventLimits.Hash)]
    public string? AnswerSha256 { get; init; }

    internal override void Check(FaultLedger ledger)
    {
        if (AnswerSha256 is not null)
        {
            EventFault.Hash(ledger, "answerSha256", AnswerSha256);
        }
    }
}
