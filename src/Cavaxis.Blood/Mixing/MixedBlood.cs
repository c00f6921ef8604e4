namespace Cavaxis.Blood.Mixing;

/// <summary>Blood after streams have mixed.</summary>
/// <param name="FlowLPerMin">Sum of the flows, L/min.</param>
/// <param name="HaemoglobinGPerDl">Haemoglobin, g/dL.</param>
/// <param name="OxygenContentMlPerDl">Oxygen content, mL/dL.</param>
/// <param name="Saturation">Saturation, a fraction from 0 to 1.</param>
/// <param name="Po2MmHg">Oxygen tension, mmHg.</param>
public readonly record struct MixedBlood(
    double FlowLPerMin, double HaemoglobinGPerDl, double OxygenContentMlPerDl, double Saturation, double Po2MmHg);
