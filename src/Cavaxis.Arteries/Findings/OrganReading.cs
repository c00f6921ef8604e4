using Cavaxis.Arteries.Tree;
using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Findings;

/// <summary>The blood that one organ gets.</summary>
/// <param name="Organ">Which.</param>
/// <param name="Title">Name in words, such as "brain, right".</param>
/// <param name="FlowLPerMin">Mean flow into it, L/min.</param>
/// <param name="RestShareOfFlow">Its flow over its flow at rest without support, 1.</param>
/// <param name="MembraneShare">Share of blood from the membrane lung in what enters, 0 to 1.</param>
/// <param name="SaturationPercent">Saturation of what enters, over the beat, %.</param>
/// <param name="Po2MmHg">Oxygen tension of what enters, over the beat, mmHg.</param>
/// <param name="MeanSaturationPercent">Mean saturation with the interval from the uncertain inputs that were varied, %.</param>
/// <param name="DeliveryMlPerMin">Oxygen delivered, mL/min.</param>
public sealed record OrganReading(
    ArterialOrgan Organ,
    string Title,
    double FlowLPerMin,
    double RestShareOfFlow,
    OverBeat MembraneShare,
    OverBeat SaturationPercent,
    OverBeat Po2MmHg,
    Estimate MeanSaturationPercent,
    double DeliveryMlPerMin);
