namespace Cavaxis.Arteries.Findings;

/// <summary>The left ventricle against the tree, beside the closed loop on the same numbers.</summary>
/// <param name="NativeOutputLPerMin">Flow through the aortic valve, L/min.</param>
/// <param name="StrokeVolumeMl">Stroke volume, mL.</param>
/// <param name="ValveOpenPercent">Share of the beat with an open aortic valve, %.</param>
/// <param name="MeanPressureMmHg">Mean pressure in the aortic root, mmHg.</param>
/// <param name="SystolicPressureMmHg">Highest pressure in the right radial artery, mmHg.</param>
/// <param name="DiastolicPressureMmHg">Lowest pressure in the right radial artery, mmHg.</param>
/// <param name="ClosedLoopNativeOutputLPerMin">Native output of the closed loop with the same numbers, L/min.</param>
/// <param name="ClosedLoopMeanPressureMmHg">Mean arterial pressure of the closed loop, mmHg.</param>
public sealed record HeartReading(
    double NativeOutputLPerMin,
    double StrokeVolumeMl,
    double ValveOpenPercent,
    double MeanPressureMmHg,
    double SystolicPressureMmHg,
    double DiastolicPressureMmHg,
    double ClosedLoopNativeOutputLPerMin,
    double ClosedLoopMeanPressureMmHg);
