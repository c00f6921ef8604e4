namespace Cavaxis.Arteries.Scaling;

/// <summary>What the circulation says of the arterioles and of the large arteries together. SI units.</summary>
/// <param name="MeanPressurePa">Mean arterial pressure at which the flows hold, Pa.</param>
/// <param name="OutflowPressurePa">Pressure behind the arterioles, Pa.</param>
/// <param name="FlowM3PerS">Flow through all arterioles at that pressure, m³/s.</param>
/// <param name="ComplianceM3PerPa">Compliance of all arteries, m³/Pa.</param>
/// <param name="CoronaryShare">Share of the flow: heart.</param>
/// <param name="UpperShare">Share: head, arms, chest wall.</param>
/// <param name="SplanchnicShare">Share: stomach, liver, spleen, gut.</param>
/// <param name="RenalShare">Share: both kidneys. The rest goes to pelvis and legs.</param>
/// <param name="ViscosityPaS">Viscosity of the blood, Pa s.</param>
/// <param name="DensityKgPerM3">Density of the blood, kg/m³.</param>
public sealed record BedState(
    double MeanPressurePa,
    double OutflowPressurePa,
    double FlowM3PerS,
    double ComplianceM3PerPa,
    double CoronaryShare,
    double UpperShare,
    double SplanchnicShare,
    double RenalShare,
    double ViscosityPaS,
    double DensityKgPerM3);
