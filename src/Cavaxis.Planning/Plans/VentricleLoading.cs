using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>What pumping into an artery does to the left ventricle.</summary>
/// <param name="WedgeBeforeMmHg">Pulmonary venous pressure without support.</param>
/// <param name="WedgeMmHg">Pulmonary venous pressure at the planned flow.</param>
/// <param name="EndDiastolicPressureMmHg">Left ventricular end-diastolic pressure at the planned flow.</param>
/// <param name="EndDiastolicVolumeMl">Left ventricular end-diastolic volume at the planned flow.</param>
/// <param name="NativeOutputLPerMin">What the heart still ejects.</param>
/// <param name="AorticValveOpenPercent">Share of the beat with the aortic valve open.</param>
/// <param name="ValveStopsOpeningAboveLPerMin">Pump flow above which the aortic valve stays shut; null where it opens at every flow computed.</param>
/// <param name="HighestFlowComputedLPerMin">Highest pump flow that was computed.</param>
public sealed record VentricleLoading(
    Estimate WedgeBeforeMmHg,
    Estimate WedgeMmHg,
    Estimate EndDiastolicPressureMmHg,
    Estimate EndDiastolicVolumeMl,
    Estimate NativeOutputLPerMin,
    Estimate AorticValveOpenPercent,
    Estimate? ValveStopsOpeningAboveLPerMin,
    double HighestFlowComputedLPerMin);
