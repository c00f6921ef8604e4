namespace Cavaxis.Devices.Hydraulics;

/// <summary>A Newtonian liquid.</summary>
/// <param name="DensityKgPerM3">Density in kg/m³.</param>
/// <param name="ViscosityPaS">Dynamic viscosity in Pa s.</param>
public readonly record struct Fluid(double DensityKgPerM3, double ViscosityPaS);
