namespace Cavaxis.Planning.Running;

/// <summary>Volume and pressure of a ventricle over the settled breath, sample by sample.</summary>
/// <param name="VolumeMl">Volumes.</param>
/// <param name="PressureMmHg">Pressures at the same moments.</param>
/// <param name="WorkMmHgMl">Area of the loop in a beat.</param>
public sealed record PressureVolumeLoop(IReadOnlyList<double> VolumeMl, IReadOnlyList<double> PressureMmHg, double WorkMmHgMl);
