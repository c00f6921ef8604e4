namespace Cavaxis.Imaging.Echo;

/// <summary>
/// Acoustic numbers of the materials. Attenuation of water, blood and soft tissue (liver) at 1 MHz: 0.0022, 0.15 and 0.50 dB/cm
/// (Diagnostics 2023;13:855, table 4, seen); growing with frequency, water with its square (from memory). Scatter against tissue and the
/// numbers of polymers: assumptions of this project (docs/models/synthetic-ultrasound.md). The sound of metal, 5900 m/s, and of polymer, 1700 m/s: from memory.
/// </summary>
public static class MaterialTable
{
    /// <summary>Speed of sound in steel, m/s.</summary>
    public const double SteelSpeedMPerS = 5900;

    /// <summary>Speed of sound in the polymer of a wall, m/s.</summary>
    public const double PolymerSpeedMPerS = 1700;

    /// <summary>Part of the pressure that steel throws back into water: (45 − 1.5)/(45 + 1.5), impedances in MRayl.</summary>
    public const double SteelReflection = 0.935;

    /// <summary>Part of the pressure that the polymer of a wall throws back: (2.0 − 1.5)/(2.0 + 1.5).</summary>
    public const double PolymerReflection = 0.14;

    /// <summary>Part of the pressure that the inner face of a vessel throws back (assumption of this project).</summary>
    public const double IntimaReflection = 0.015;

    /// <summary>
    /// Backscatter coefficient of soft tissue, 1/(mm sr), at a frequency: 3e-4 at 5 MHz and growing with its 1.5th power (from memory, the
    /// order of magnitude of liver).
    /// </summary>
    /// <param name="frequencyMHz">MHz.</param>
    public static double TissueBackscatter(double frequencyMHz) => 3e-4 * Math.Pow(frequencyMHz / 5, 1.5);

    /// <summary>Scattered amplitude against that of soft tissue.</summary>
    /// <param name="material">The material.</param>
    public static double Scatter(Material material) => material switch
    {
        Material.Blood => 0.045,
        Material.Tissue => 1,
        Material.VesselWall => 1.8,
        Material.Polymer or Material.WoundPolymer => 0.5,
        Material.Introducer => 0.25,
        _ => 0,
    };

    /// <summary>Loss of the pressure on one way, dB/mm; that of a winding comes on top (<see cref="CoilWinding.LossDb"/>).</summary>
    /// <param name="material">The material.</param>
    /// <param name="frequencyMHz">MHz.</param>
    public static double LossDbPerMm(Material material, double frequencyMHz) => material switch
    {
        Material.Water => 0.00022 * frequencyMHz * frequencyMHz,
        Material.Blood => 0.015 * frequencyMHz,
        Material.Tissue => 0.05 * frequencyMHz,
        Material.VesselWall => 0.08 * frequencyMHz,
        Material.Polymer or Material.WoundPolymer => 0.3 * frequencyMHz,
        Material.Introducer => 0.2 * frequencyMHz,
        _ => 30,
    };
}
