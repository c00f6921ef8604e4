using Cavaxis.Arteries.Tree;

namespace Cavaxis.Arteries.Scaling;

/// <summary>One segment in this patient. SI units.</summary>
/// <param name="Table">The segment of the table that it comes from.</param>
/// <param name="LengthM">Length, m.</param>
/// <param name="ProximalRadiusM">Inner radius at its beginning at the reference pressure, m.</param>
/// <param name="DistalRadiusM">Inner radius at its end at the reference pressure, m.</param>
/// <param name="WallM">Thickness of the wall at its beginning, m; along the segment it keeps its ratio to the radius.</param>
/// <param name="ModulusPa">Young's modulus, Pa.</param>
/// <param name="RestFlowM3PerS">Flow through it at rest without support, m³/s.</param>
/// <param name="EndResistancePaSPerM3">Resistance behind its end, Pa s/m³; null where it divides.</param>
/// <param name="EndComplianceM3PerPa">Compliance behind its end, m³/Pa; null where it divides.</param>
public sealed record PatientSegment(
    ArterySegment Table,
    double LengthM,
    double ProximalRadiusM,
    double DistalRadiusM,
    double WallM,
    double ModulusPa,
    double RestFlowM3PerS,
    double? EndResistancePaSPerM3,
    double? EndComplianceM3PerPa)
{
    /// <summary>Resistance of the segment itself to steady flow with a parabolic profile, exact for a linear taper, Pa s/m³.</summary>
    /// <param name="viscosityPaS">Viscosity, Pa s.</param>
    /// <returns>8 μ L (a² + ab + b²)/(3 π a³ b³), the integral of 8 μ/(π r⁴) over the length.</returns>
    public double Resistance(double viscosityPaS)
    {
        (double a, double b) = (ProximalRadiusM, DistalRadiusM);
        return 8 * viscosityPaS * LengthM * ((a * a) + (a * b) + (b * b)) / (3 * Math.PI * a * a * a * b * b * b);
    }
}
