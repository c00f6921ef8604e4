namespace Cavaxis.Devices.Cannulae;

/// <summary>A range of bending stiffness EI in N mm², to be swept, since no value for these cannulae is published.</summary>
/// <param name="LowNMm2">Softest value considered.</param>
/// <param name="HighNMm2">Stiffest value considered.</param>
public sealed record StiffnessRange(double LowNMm2, double HighNMm2);
