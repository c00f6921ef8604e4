using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Pumps;

/// <summary>
/// A centrifugal pump described by its head curve at one speed, ΔP = P₀ + a Q + b Q², scaled to other speeds by the affinity laws
/// (flow with speed, pressure with its square). Running wear, air and the thickness of the blood are not in the curve.
/// </summary>
/// <param name="Id">Unique lower-case identifier in the catalogue.</param>
/// <param name="Description">What it is, in plain words, without any maker's name.</param>
/// <param name="ReferenceSpeedRpm">Speed of the curve.</param>
/// <param name="ShutOffMmHg">Pressure rise P₀ at no flow and the reference speed.</param>
/// <param name="LinearMmHgPerLPerMin">Coefficient a, zero or negative.</param>
/// <param name="QuadraticMmHgPerLPerMin2">Coefficient b, negative.</param>
/// <param name="LowestSpeedRpm">Lowest speed that may be set.</param>
/// <param name="HighestSpeedRpm">Highest speed that may be set.</param>
/// <param name="HighestFlowLPerMin">Highest flow the pump is meant for.</param>
/// <param name="LowestInletPressureMmHg">Inlet pressure below which suction is a concern; negative.</param>
/// <param name="Source">Where the numbers come from.</param>
public sealed record CentrifugalPump(
    string Id,
    string Description,
    double ReferenceSpeedRpm,
    double ShutOffMmHg,
    double LinearMmHgPerLPerMin,
    double QuadraticMmHgPerLPerMin2,
    double LowestSpeedRpm,
    double HighestSpeedRpm,
    double HighestFlowLPerMin,
    double LowestInletPressureMmHg,
    Source Source)
{
    /// <summary>Pressure rise across the pump: P₀ n² + a n Q + b Q² with n = speed over reference speed.</summary>
    /// <param name="speedRpm">Speed, positive.</param>
    /// <param name="flowLPerMin">Flow, 0 to 15 L/min.</param>
    /// <returns>Pressure rise in mmHg; negative where the flow is more than the pump can drive at that speed.</returns>
    /// <exception cref="InputFaultException">A number is outside what can be computed.</exception>
    public double HeadMmHg(double speedRpm, double flowLPerMin)
    {
        Require.InRange(speedRpm, 1, 20_000, "speedRpm", "Give the speed of the pump.");
        Require.InRange(flowLPerMin, 0, 15, "flowLPerMin", "Give a flow that a circuit can carry.");
        double n = speedRpm / ReferenceSpeedRpm;
        return (ShutOffMmHg * n * n) + (LinearMmHgPerLPerMin * n * flowLPerMin)
            + (QuadraticMmHgPerLPerMin2 * flowLPerMin * flowLPerMin);
    }

    /// <summary>Speed that gives a pressure rise at a flow: the positive root of the scaled curve.</summary>
    /// <param name="flowLPerMin">Flow, 0 to 15 L/min.</param>
    /// <param name="headMmHg">Pressure rise wanted, 0 to 1000 mmHg.</param>
    /// <returns>Speed in rpm. It may lie outside the speeds that can be set: ask <see cref="CanRunAt"/>.</returns>
    /// <exception cref="InputFaultException">A number is outside what can be computed.</exception>
    public double SpeedFor(double flowLPerMin, double headMmHg)
    {
        Require.InRange(flowLPerMin, 0, 15, "flowLPerMin", "Give a flow that a circuit can carry.");
        Require.InRange(headMmHg, 0, 1000, "headMmHg", "Give the pressure rise across the pump.");
        double linear = LinearMmHgPerLPerMin * flowLPerMin;
        double constant = (QuadraticMmHgPerLPerMin2 * flowLPerMin * flowLPerMin) - headMmHg;
        return ReferenceSpeedRpm * (-linear + Math.Sqrt((linear * linear) - (4 * ShutOffMmHg * constant))) / (2 * ShutOffMmHg);
    }

    /// <summary>True when the speed can be set and the flow is one the pump is meant for.</summary>
    /// <param name="speedRpm">Speed.</param>
    /// <param name="flowLPerMin">Flow.</param>
    /// <returns>Whether the point lies inside the pump's field.</returns>
    public bool CanRunAt(double speedRpm, double flowLPerMin) =>
        speedRpm >= LowestSpeedRpm && speedRpm <= HighestSpeedRpm && flowLPerMin >= 0 && flowLPerMin <= HighestFlowLPerMin;

    /// <summary>Distance of an inlet pressure from the limit.</summary>
    /// <param name="inletPressureMmHg">Pressure before the pump, negative for suction.</param>
    /// <returns>Margin in mmHg; negative when the limit is passed.</returns>
    public double InletMarginMmHg(double inletPressureMmHg) => inletPressureMmHg - LowestInletPressureMmHg;
}
