using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Circuit;

/// <summary>A length of round tubing in the circuit.</summary>
/// <param name="InnerDiameterMm">Inner diameter.</param>
/// <param name="LengthM">Length.</param>
public sealed record Tubing(double InnerDiameterMm, double LengthM)
{
    /// <summary>Inner diameter of three-eighths-inch tubing, mm (exact).</summary>
    public const double ThreeEighthsInchMm = 9.525;

    /// <summary>Inner diameter of quarter-inch tubing, mm (exact).</summary>
    public const double QuarterInchMm = 6.35;

    /// <summary>Friction drop of the straight tubing; bends and connectors are not counted.</summary>
    /// <param name="flowLPerMin">Flow, 0 to 15 L/min.</param>
    /// <param name="fluid">The liquid.</param>
    /// <returns>Pressure drop, Pa.</returns>
    /// <exception cref="InputFaultException">A number is outside what can be computed.</exception>
    public double DropPa(double flowLPerMin, Fluid fluid)
    {
        Require.InRange(flowLPerMin, 0, CannulaHydraulics.HighestFlowLPerMin, "flowLPerMin", "Give a flow that a circuit can carry.");
        Require.InRange(InnerDiameterMm, 2, 15, "tubing.innerDiameterMm", "Give the inner diameter of the tubing.");
        Require.InRange(LengthM, 0, 10, "tubing.lengthM", "Give the length of the tubing.");
        LumenHydraulics.CheckFluid(fluid);
        if (flowLPerMin == 0)
        {
            return 0;
        }

        double diameter = InnerDiameterMm * UnitFactors.MetresPerMm;
        double velocity = 4 * flowLPerMin * UnitFactors.CubicMetresPerSecondPerLPerMin / (Math.PI * diameter * diameter);
        double reynolds = fluid.DensityKgPerM3 * velocity * diameter / fluid.ViscosityPaS;
        return TubeFriction.DisturbedInlet(reynolds) * LengthM / diameter * 0.5 * fluid.DensityKgPerM3 * velocity * velocity;
    }
}
