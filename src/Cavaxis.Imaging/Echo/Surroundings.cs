using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Echo;

/// <summary>What lies about a device.</summary>
public sealed record Surroundings
{
    private Surroundings(SurroundingsKind kind, SpaceCurve? axis, double radiusMm, double wallMm, double variationDb)
    {
        (Kind, Axis) = (kind, axis);
        RadiusMm = Require.InRange(radiusMm, 0, 40, "vessel.radiusMm", "Give the radius of the lumen.");
        WallMm = Require.InRange(wallMm, 0, 5, "vessel.wallMm", "Give the thickness of the vessel's wall.");
        TissueVariationDb = Require.InRange(variationDb, 0, 12, "surroundings.tissueVariationDb", "Give how unevenly the tissue scatters.");
    }

    /// <summary>Kind.</summary>
    public SurroundingsKind Kind { get; }

    /// <summary>Middle line of the vessel; null without one.</summary>
    public SpaceCurve? Axis { get; }

    /// <summary>Radius of the vessel's lumen, mm.</summary>
    public double RadiusMm { get; }

    /// <summary>Thickness of its wall, mm.</summary>
    public double WallMm { get; }

    /// <summary>Standard deviation of the slow unevenness of the tissue's scatter, dB.</summary>
    public double TissueVariationDb { get; }

    /// <summary>What fills the room where nothing else is.</summary>
    public Material Outside => Kind == SurroundingsKind.WaterBath ? Material.Water : Material.Tissue;

    /// <summary>What fills the lumen of a device.</summary>
    public Material Fluid => Kind == SurroundingsKind.WaterBath ? Material.Water : Material.Blood;

    /// <summary>A bath of water.</summary>
    public static Surroundings WaterBath { get; } = new(SurroundingsKind.WaterBath, null, 0, 0, 0);

    /// <summary>Tissue alone.</summary>
    /// <param name="variationDb">Unevenness, dB; 0 for an even phantom.</param>
    /// <exception cref="InputFaultException">A number is outside its bounds.</exception>
    public static Surroundings Tissue(double variationDb = 0) => new(SurroundingsKind.Tissue, null, 0, 0, variationDb);

    /// <summary>A vessel in tissue.</summary>
    /// <param name="axis">Its middle line.</param>
    /// <param name="radiusMm">Radius of its lumen, 0.5 to 40 mm.</param>
    /// <param name="wallMm">Thickness of its wall, 0 to 5 mm.</param>
    /// <param name="variationDb">Unevenness of the tissue, dB.</param>
    /// <exception cref="InputFaultException">A number is outside its bounds.</exception>
    public static Surroundings Vessel(SpaceCurve axis, double radiusMm, double wallMm = 1, double variationDb = 2)
    {
        ArgumentNullException.ThrowIfNull(axis);
        _ = Require.InRange(radiusMm, 0.5, 40, "vessel.radiusMm", "Give the radius of the lumen.");
        return new Surroundings(SurroundingsKind.Vessel, axis, radiusMm, wallMm, variationDb);
    }

    /// <summary>The same with another radius of the lumen.</summary>
    /// <param name="radiusMm">mm.</param>
    /// <returns>The surroundings; the same where there is no vessel.</returns>
    public Surroundings WithRadius(double radiusMm) => Axis is null ? this : Vessel(Axis, radiusMm, WallMm, TissueVariationDb);
}
