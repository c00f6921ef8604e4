using Cavaxis.Quantities;

namespace Cavaxis.Cli.Commands;

/// <summary>Pressure of a lumen at one flow.</summary>
/// <param name="FlowLPerMin">Flow.</param>
/// <param name="PressureDropMmHg">Pressure drop.</param>
/// <param name="HoleShares">Share of the flow through each hole group, hub side first.</param>
public sealed record LumenPoint(double FlowLPerMin, Estimate PressureDropMmHg, IReadOnlyList<double> HoleShares);
