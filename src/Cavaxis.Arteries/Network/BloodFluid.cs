using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Network;

/// <summary>The fluid in the vessels: Newtonian, with a velocity profile u/U = (ζ+2)/ζ · (1 − (r/R)^ζ).</summary>
public sealed record BloodFluid
{
    /// <summary>A fluid.</summary>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="viscosity">Viscosity, Pa·s; zero for an inviscid fluid.</param>
    /// <param name="profileExponent">ζ: 2 for a parabola, 9 for the blunt profile of large arteries.</param>
    /// <exception cref="InputFaultException">A number outside its range.</exception>
    public BloodFluid(double density, double viscosity, double profileExponent)
    {
        Density = Require.InRange(density, 100, 20_000, "fluid.density (kg/m³)", "Blood is about 1060.");
        Viscosity = Require.InRange(viscosity, 0, 1, "fluid.viscosity (Pa·s)", "Blood is about 0.004.");
        ProfileExponent = Require.InRange(profileExponent, 1, 100, "fluid.profileExponent (1)", "2 is a parabola, 9 a blunt profile.");
    }

    /// <summary>Density, kg/m³.</summary>
    public double Density { get; }

    /// <summary>Viscosity, Pa·s.</summary>
    public double Viscosity { get; }

    /// <summary>Exponent ζ of the velocity profile.</summary>
    public double ProfileExponent { get; }

    /// <summary>
    /// Friction: the rate at which a velocity in a free lumen dies away is this over its area, m²/s. From the slope of the profile
    /// at the wall: 2 (ζ+2) π μ/ρ.
    /// </summary>
    public double Drag => 2 * (ProfileExponent + 2) * Math.PI * Viscosity / Density;
}
