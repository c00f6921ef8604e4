namespace Cavaxis.Planning.Plans;

/// <summary>One point of the circuit's pressure-flow chart.</summary>
/// <param name="FlowLPerMin">Pump flow.</param>
/// <param name="InletPressureMmHg">Pressure at the pump inlet.</param>
/// <param name="ReturnPressureMmHg">Pressure after the membrane lung.</param>
public sealed record PressureFlowPoint(double FlowLPerMin, double InletPressureMmHg, double ReturnPressureMmHg);
