using Cavaxis.Quantities;

namespace Cavaxis.Course.Weaning;

/// <summary>Published protocols, shown beside a trial; what was done is recorded, not enforced.</summary>
/// <param name="Kind">Which trial.</param>
/// <param name="Steps">Its steps.</param>
/// <param name="HighestTestedFlowLPerMin">Highest pump flow at which the readings count as those of the patient alone; null where flow is not lowered.</param>
/// <param name="LowestFlowLPerMin">Lowest pump flow that the source keeps.</param>
/// <param name="ShortestTestMin">Shortest time at the lowest support, min.</param>
/// <param name="Sources">Where it comes from.</param>
public sealed record WeaningProtocol(
    WeaningKind Kind, IReadOnlyList<WeaningProtocolStep> Steps, double? HighestTestedFlowLPerMin, double LowestFlowLPerMin, double ShortestTestMin, IReadOnlyList<Source> Sources)
{
    /// <summary>Flow reduction on veno-arterial support.</summary>
    public static WeaningProtocol VenoArterial { get; } = new(
        WeaningKind.VenoArterialFlow,
        [new("pump flow to 66 % of what it was", 10, 15), new("pump flow to 33 %", 10, 15), new("pump flow to 1 to 1.5 L/min, not below 1 L/min", 10, 15)],
        1.5, 1, 10,
        [
            new("Aissaoui et al. 2011, Intensive Care Med 37:1738: readings at a flow below 1.5 L/min", Certainty.SeenSecondHand),
            new("Aissaoui et al. 2011: 66 %, 33 %, 1 to 1.5 L/min, 10 to 15 min each", Certainty.FromMemory),
        ]);

    /// <summary>Sweep-off on veno-venous support.</summary>
    public static WeaningProtocol VenoVenous { get; } = new(
        WeaningKind.VenoVenousSweep,
        [new("sweep oxygen fraction or sweep flow down in steps, blood gases after each", 15, 60), new("sweep off, pump flow kept above 2 L/min", 60, 720)],
        null, 2, 60,
        [
            new("Textbook chapter on weaning of veno-venous support: flow kept above 2 L/min, sweep off, 1 to 12 h", Certainty.Seen),
            new("Retrospective series of 74 patients: blood gases did not change after the first hour of sweep-off (abstract)", Certainty.Seen),
        ]);

    /// <summary>The protocol of a trial.</summary>
    /// <param name="kind">Which.</param>
    /// <returns>The protocol.</returns>
    public static WeaningProtocol Of(WeaningKind kind) => kind == WeaningKind.VenoArterialFlow ? VenoArterial : VenoVenous;
}
