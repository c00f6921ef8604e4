using Cavaxis.Anatomy.Body;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Tree;
using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Tests.Scaling;

/// <summary>Trees that several tests start from.</summary>
internal static class SampleTrees
{
    public static readonly BodyHabitus Adult = new(40, Sex.Male, 175, 75);

    public static readonly BedState Beds = new(
        90 * UnitFactors.PascalsPerMmHg, 9 * UnitFactors.PascalsPerMmHg, 5.4 * UnitFactors.CubicMetresPerSecondPerLPerMin, 1.5e-6 / UnitFactors.PascalsPerMmHg,
        0.045, 0.31, 0.26, 0.21, 3.2e-3, 1055);

    public static PatientTree Of(params IReadOnlyList<(AccessArtery Artery, double Mm)> measured) => TreeScaling.Of(
        ArterialTable.BuiltIn, Adult, [.. measured.Select(static m => new MeasuredDiameter(m.Artery, Estimate.Normal(m.Mm, 0.3, Origin.Measured)))], Beds);
}
