namespace Cavaxis.Devices.Hydraulics;

/// <summary>
/// Loss coefficients K of single resistances: total-pressure loss over the velocity head ½ρV² at the narrower section.
/// Handbook: Crane Technical Paper 410, appendix A, as quoted by two programs' manuals that were read.
/// </summary>
public static class LossCoefficient
{
    /// <summary>Sharp-edged entrance from a large space into a tube (Crane 410).</summary>
    public const double SharpEntrance = 0.5;

    /// <summary>Exit of a tube into a large space: the whole velocity head (Borda and Carnot).</summary>
    public const double Exit = 1;

    /// <summary>
    /// Discharge coefficient of a sharp-edged round hole between large spaces, handbook value 0.62 (free-streamline theory of a slit:
    /// π/(π + 2) = 0.611).
    /// </summary>
    public const double SharpHoleDischarge = 0.62;

    /// <summary>Full included angle, in degrees, assumed for moulded transitions between the bores of a cannula.</summary>
    public const double MouldedTransitionDegrees = 20;

    /// <summary>Contraction: 0.8 sin(θ/2)(1 − r) up to 45°, 0.5 √sin(θ/2) (1 − r) above (Crane 410).</summary>
    /// <param name="areaRatio">Narrow area over wide area, 0 to 1.</param>
    /// <param name="includedAngleDegrees">Full angle of the cone, up to 180 for a step.</param>
    /// <returns>K on the velocity head of the narrow section.</returns>
    public static double Contraction(double areaRatio, double includedAngleDegrees)
    {
        double sine = HalfAngleSine(areaRatio, includedAngleDegrees);
        return (includedAngleDegrees <= 45 ? 0.8 * sine : 0.5 * Math.Sqrt(sine)) * (1 - areaRatio);
    }

    /// <summary>Expansion: 2.6 sin(θ/2)(1 − r)² up to 45°, (1 − r)² above (Crane 410; Borda and Carnot).</summary>
    /// <param name="areaRatio">Narrow area over wide area, 0 to 1.</param>
    /// <param name="includedAngleDegrees">Full angle of the cone, up to 180 for a step.</param>
    /// <returns>K on the velocity head of the narrow section.</returns>
    public static double Expansion(double areaRatio, double includedAngleDegrees)
    {
        double sine = HalfAngleSine(areaRatio, includedAngleDegrees);
        return (includedAngleDegrees <= 45 ? 2.6 * sine : 1) * (1 - areaRatio) * (1 - areaRatio);
    }

    private static double HalfAngleSine(double areaRatio, double includedAngleDegrees)
    {
        if (!(areaRatio >= 0 && areaRatio <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(areaRatio), areaRatio, "Narrow over wide area lies between 0 and 1.");
        }

        return includedAngleDegrees >= 0 && includedAngleDegrees <= 180
            ? Math.Sin(includedAngleDegrees * Math.PI / 360)
            : throw new ArgumentOutOfRangeException(nameof(includedAngleDegrees), includedAngleDegrees, "An included angle lies between 0 and 180 degrees.");
    }
}
