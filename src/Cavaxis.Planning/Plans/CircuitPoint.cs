using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>The circuit at the planned flow.</summary>
/// <param name="PumpId">Pump in the catalogue.</param>
/// <param name="MembraneLungId">Membrane lung in the catalogue.</param>
/// <param name="FlowLPerMin">Pump flow.</param>
/// <param name="InletPressureMmHg">Pressure at the pump inlet.</param>
/// <param name="InletMarginMmHg">Distance from the usual inlet limit; negative beyond it.</param>
/// <param name="ReturnPressureMmHg">Pressure after the membrane lung.</param>
/// <param name="ReturnMarginMmHg">Distance from the usual return limit; negative beyond it.</param>
/// <param name="PumpSpeedPerMin">Speed that gives flow and head; null when the pump cannot.</param>
/// <param name="SweepGasLPerMin">Sweep gas that removes the patient's carbon dioxide; null when the lung cannot.</param>
/// <param name="PressureFlow">The circuit's inlet pressure and return pressure over flow, for the chart.</param>
public sealed record CircuitPoint(
    string PumpId,
    string MembraneLungId,
    double FlowLPerMin,
    Estimate InletPressureMmHg,
    double InletMarginMmHg,
    Estimate ReturnPressureMmHg,
    double ReturnMarginMmHg,
    Estimate? PumpSpeedPerMin,
    Estimate? SweepGasLPerMin,
    IReadOnlyList<PressureFlowPoint> PressureFlow);
