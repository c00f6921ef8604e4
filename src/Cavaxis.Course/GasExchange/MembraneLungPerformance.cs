using Cavaxis.Course.Criteria;
using Cavaxis.Quantities;

namespace Cavaxis.Course.GasExchange;

/// <summary>What a membrane lung does, as far as the readings tell. Null where they do not.</summary>
public sealed record MembraneLungPerformance
{
    /// <summary>Oxygen given to the blood, bound and dissolved, mL/min at standard conditions.</summary>
    public required Estimate? OxygenTransferMlPerMin { get; init; }

    /// <summary>Carbon dioxide taken out of the blood by its content on both sides, mL/min at standard conditions.</summary>
    public required Estimate? CarbonDioxideTransferMlPerMin { get; init; }

    /// <summary>Carbon dioxide carried off by the sweep gas, mL/min at standard conditions.</summary>
    public required Estimate? CarbonDioxideExhaustedMlPerMin { get; init; }

    /// <summary>Pressure drop, mmHg.</summary>
    public required Estimate? DropMmHg { get; init; }

    /// <summary>Pressure drop over flow, mmHg/(L/min).</summary>
    public required Estimate? DropPerFlow { get; init; }

    /// <summary>Rise of drop over flow since the reference, %, flow taken into account where the lung is known.</summary>
    public required Estimate? DropRisePercent { get; init; }

    /// <summary>Share of the blood that passes as if it met no gas, %.</summary>
    public required Estimate? ShuntPercent { get; init; }

    /// <summary>Share of the sweep gas that passes as if it met no blood, %.</summary>
    public required Estimate? DeadSpacePercent { get; init; }

    /// <summary>Oxygen bound, over what the lung of the catalogue would bind with the same blood, flow and gas.</summary>
    public required Estimate? BoundOverExpected { get; init; }

    /// <summary>Each published sign of failure against the readings; met means that the sign is there.</summary>
    public required IReadOnlyList<CriterionJudgement> FailureSigns { get; init; }

    /// <summary>What the signs say together.</summary>
    public required string Words { get; init; }
}
