namespace Cavaxis.Arteries.Findings;

/// <summary>One point of a sweep over pump flow and contractility.</summary>
/// <param name="PumpFlowLPerMin">Pump flow, L/min.</param>
/// <param name="ContractilityFactor">Factor on the end-systolic elastance of the left ventricle.</param>
/// <param name="NativeOutputLPerMin">Flow through the aortic valve, L/min.</param>
/// <param name="MeanPressureMmHg">Mean pressure in the aortic root, mmHg.</param>
/// <param name="HalfCm">Where half the blood is from the membrane lung, from the valve, over the beat, cm.</param>
/// <param name="PlaceInWords">The same in words.</param>
/// <param name="HeartPercent">Mean saturation at the heart muscle, %.</param>
/// <param name="BrainRightPercent">Mean saturation at the right half of the brain, %.</param>
/// <param name="BrainLeftPercent">Mean saturation at the left half of the brain, %.</param>
/// <param name="HandRightPercent">Mean saturation at the right hand, %.</param>
/// <param name="HandLeftPercent">Mean saturation at the left hand, %.</param>
public sealed record ArterialSweepPoint(
    double PumpFlowLPerMin,
    double ContractilityFactor,
    double NativeOutputLPerMin,
    double MeanPressureMmHg,
    OverBeat HalfCm,
    string PlaceInWords,
    double HeartPercent,
    double BrainRightPercent,
    double BrainLeftPercent,
    double HandRightPercent,
    double HandLeftPercent);
