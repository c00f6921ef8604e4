namespace Cavaxis.Devices.Hydraulics;

/// <summary>
/// Pressure and flow of one hole through a thin wall: the inertial loss of a sharp orifice plus the creeping-flow resistance of
/// Sampson (1891), 3 μ Q / r³ per hole, exact at a vanishing Reynolds number. Their sum is monotone in flow and in viscosity.
/// </summary>
public static class Orifice
{
    /// <summary>Inertial loss coefficient on the velocity head in the hole, 1/Cd².</summary>
    public const double InertialLoss = 1 / (LossCoefficient.SharpHoleDischarge * LossCoefficient.SharpHoleDischarge);

    /// <summary>Pressure drop across a hole.</summary>
    /// <param name="velocityMPerS">Mean velocity in the hole, not negative.</param>
    /// <param name="diameterM">Diameter of the hole.</param>
    /// <param name="fluid">The liquid.</param>
    /// <returns>Pressure drop, Pa.</returns>
    public static double DropPa(double velocityMPerS, double diameterM, Fluid fluid) =>
        velocityMPerS * ((0.5 * fluid.DensityKgPerM3 * InertialLoss * velocityMPerS) + ViscousSlope(diameterM, fluid));

    /// <summary>Mean velocity in a hole under a pressure difference.</summary>
    /// <param name="dropPa">Pressure difference, not negative.</param>
    /// <param name="diameterM">Diameter of the hole.</param>
    /// <param name="fluid">The liquid.</param>
    /// <returns>Velocity, m/s.</returns>
    public static double VelocityMPerS(double dropPa, double diameterM, Fluid fluid)
    {
        double square = 0.5 * fluid.DensityKgPerM3 * InertialLoss;
        double linear = ViscousSlope(diameterM, fluid);
        return 2 * dropPa / (linear + Math.Sqrt((linear * linear) + (4 * square * dropPa)));
    }

    // 3 μ Q / r³ with Q = π r² v and r = d/2.
    private static double ViscousSlope(double diameterM, Fluid fluid) => 6 * Math.PI * fluid.ViscosityPaS / diameterM;
}
