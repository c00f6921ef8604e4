using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Json;

namespace Cavaxis.Course.Events;

/// <summary>One of the ranked plans was chosen.</summary>
public sealed record PlanChosen : CourseEvent
{
    /// <summary>The plan in words.</summary>
    [Text(EventLimits.Line)]
    public required string Name { get; init; }

    /// <summary>How patient and circuit are connected.</summary>
    public required ConfigurationKind Configuration { get; init; }

    /// <summary>Number of the entry whose case the plan was computed from.</summary>
    [Number(1, int.MaxValue, "1")]
    public int? CaseEntry { get; init; }

    /// <summary>Rank in the list.</summary>
    [Number(1, 10000, "1")]
    public int? Rank { get; init; }

    /// <summary>Flow the plan is sized for, L/min.</summary>
    [Number(0, 10, "L/min")]
    public double? FlowLPerMin { get; init; }

    /// <summary>The cannulae.</summary>
    [Text(EventLimits.Cannulae)]
    public IReadOnlyList<PlannedCannula> Cannulae { get; init; } = [];

    /// <summary>The steps of the procedure, numbered from 1 without gaps.</summary>
    [Text(EventLimits.Steps)]
    public IReadOnlyList<PlannedStep> Steps { get; init; } = [];

    /// <summary>Why this one.</summary>
    [Text(EventLimits.Remark)]
    public string? Reason { get; init; }

    internal override void Check(FaultLedger ledger)
    {
        for (int i = 0; i < Steps.Count; i++)
        {
            if (Steps[i].Number != i + 1)
            {
                EventFault.Contradiction(ledger, FormattableString.Invariant($"steps[{i}].number"), FormattableString.Invariant($"{Steps[i].Number}"), FormattableString.Invariant($"{i + 1}: steps are numbered from 1 without gaps"), "Number the steps in their order.");
            }
        }
    }
}
