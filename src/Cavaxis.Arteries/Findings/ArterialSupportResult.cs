using System.Collections.Immutable;
using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Findings;

/// <summary>
/// The arterial tree of one patient under one support: where the two flows meet, which organ gets which blood, and whether the leg below
/// the cannula is perfused. Everything is computed; nothing of it is a measurement of this patient's arteries.
/// </summary>
/// <param name="PumpFlowLPerMin">Pump flow that was computed with, L/min; zero without support.</param>
/// <param name="ReturnInWords">Where the pump returns, such as "right femoral artery, 17 Fr".</param>
/// <param name="NativeSaturationPercent">Saturation of the blood that the lungs send to the left ventricle, %.</param>
/// <param name="NativePo2MmHg">Its oxygen tension, mmHg.</param>
/// <param name="MembraneSaturationPercent">Saturation behind the membrane lung, %.</param>
/// <param name="MembranePo2MmHg">Its oxygen tension, mmHg.</param>
/// <param name="Heart">Left ventricle and pressures.</param>
/// <param name="Arteries">Every segment, in the order of the table.</param>
/// <param name="Organs">Every organ, in the order of <see cref="Tree.ArterialOrgan"/>.</param>
/// <param name="Mixing">Where the two flows meet; null without pump flow.</param>
/// <param name="Limbs">Both legs, right first.</param>
/// <param name="Sampling">Which arm to sample.</param>
/// <param name="Varied">The uncertain inputs that were varied for the intervals, each as a sentence.</param>
/// <param name="NotModelled">What the model leaves out, each as a sentence; shown with every result.</param>
/// <param name="Sources">Where the numbers of the tree come from.</param>
/// <param name="Settling">How well the computation has settled.</param>
public sealed record ArterialSupportResult(
    double PumpFlowLPerMin,
    string ReturnInWords,
    double NativeSaturationPercent,
    double NativePo2MmHg,
    double MembraneSaturationPercent,
    double MembranePo2MmHg,
    HeartReading Heart,
    ImmutableArray<ArterialReading> Arteries,
    ImmutableArray<OrganReading> Organs,
    MixingZone? Mixing,
    ImmutableArray<LimbReading> Limbs,
    SamplingAdvice Sampling,
    ImmutableArray<string> Varied,
    ImmutableArray<string> NotModelled,
    ImmutableArray<Source> Sources,
    SettlingRecord Settling)
{
    /// <summary>Identifier of the segment by which the pump returns; null without support. A side graft fills nothing of it.</summary>
    public string? ReturnSegment { get; init; }
}
