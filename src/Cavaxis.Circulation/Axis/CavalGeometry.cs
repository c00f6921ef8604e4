using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Axis;

/// <summary>
/// The axis as the mixing of blood sees it: positions in mm along the veins, 0 at the superior cavo-atrial junction, positive towards the
/// feet (as <see cref="Anatomy.Landmarks.CavalAxis"/> has them), and the tricuspid valve beside it.
/// </summary>
/// <param name="SvcLengthMm">Length of the superior cava.</param>
/// <param name="AtrialLengthMm">Way through the atrium: position of the inferior cavo-atrial junction.</param>
/// <param name="HepaticVeinMm">Position of the hepatic veins.</param>
/// <param name="RenalVeinMm">Position of the renal veins.</param>
/// <param name="TricuspidMm">Position of the middle of the tricuspid valve, carried over to the axis.</param>
/// <param name="TricuspidDistanceMm">Distance of the valve from the axis.</param>
/// <param name="AnnulusRadiusMm">Radius of its ring.</param>
public readonly record struct CavalGeometry(
    double SvcLengthMm,
    double AtrialLengthMm,
    double HepaticVeinMm,
    double RenalVeinMm,
    double TricuspidMm,
    double TricuspidDistanceMm,
    double AnnulusRadiusMm)
{
    /// <summary>Axis of an adult of average height: medians of the population model of the anatomy room, rounded.</summary>
    public static CavalGeometry Adult { get; } = new(68, 62, 85, 185, 33, 30, 17);

    /// <summary>Checks order and size.</summary>
    /// <returns>The same geometry.</returns>
    /// <exception cref="InputFaultException">A length is out of range or the landmarks are out of order.</exception>
    public CavalGeometry Checked()
    {
        Require.InRange(SvcLengthMm, 5, 200, "svcLengthMm", "Give the length of the superior cava.");
        Require.InRange(AtrialLengthMm, 5, 150, "atrialLengthMm", "Give the way through the atrium.");
        Require.InRange(HepaticVeinMm, AtrialLengthMm, 400, "hepaticVeinMm", "The hepatic veins lie below the atrium.");
        Require.InRange(RenalVeinMm, HepaticVeinMm, 600, "renalVeinMm", "The renal veins lie below the hepatic veins.");
        Require.InRange(TricuspidMm, -20, AtrialLengthMm + 20, "tricuspidMm", "The tricuspid valve lies beside the atrium.");
        Require.InRange(TricuspidDistanceMm, 2, 100, "tricuspidDistanceMm", "Give the distance of the valve from the axis.");
        Require.InRange(AnnulusRadiusMm, 2, 40, "annulusRadiusMm", "Give the radius of the tricuspid ring.");
        return this;
    }
}
