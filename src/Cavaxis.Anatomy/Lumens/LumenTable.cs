using Cavaxis.Anatomy.Axis;
using Cavaxis.Quantities;
using static Cavaxis.Anatomy.Lumens.LumenDimension;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>The lumen's own dimensions with their sources. Printed in docs/models/lumen.md.</summary>
public static class LumenTable
{
    private const LatentScale Log = LatentScale.Logarithmic;
    private const LatentScale Plain = LatentScale.Plain;

    /// <summary>All rows, in the order of <see cref="LumenDimension"/>.</summary>
    public static IReadOnlyList<LumenParameter> Rows { get; } =
    [
        new(RightBrachiocephalicTurn, Plain, 20, 8, 0, 50, new("nearly straight on, textbook drawings", Certainty.Assumption)),
        new(LeftBrachiocephalicAngle, Plain, 116, 7, 90, 150, new("116 deg, SD 7, 30 adults, CT (Salik 2006, JVIR)", Certainty.Seen)),
        new(LeftJugularAngle, Plain, 117, 11, 85, 150, new("117 deg, SD 11, same 30 adults", Certainty.Seen)),
        new(AzygosHeight, Plain, 0.5, 0.08, 0.25, 0.75, new("enters the back of the SVC just above the pericardium, about its middle", Certainty.FromMemory)),
        new(AzygosDiameter, Log, 0.48, 0.25, 0.2, 0.8, new("about 8 mm against an SVC of 17", Certainty.FromMemory)),
        new(AtrialRadius, Log, 0.23, 0.10, 0.16, 0.33, new("radius of 15 mm over a span of 65: chosen so that the volume with the way of the cavae is near 25 mL/m2, see docs/validation.md", Certainty.Assumption)),
        new(AppendageLength, Log, 0.45, 0.20, 0.2, 0.8, new("about 3 cm over a span of 65 mm", Certainty.FromMemory)),
        new(AppendageDiameter, Log, 0.25, 0.20, 0.12, 0.4, new("about 16 mm over a span of 65 mm", Certainty.FromMemory)),
        new(VentricleLength, Log, 1.95, 0.12, 1.3, 2.8, new("about 71 mm from annulus to apex over an annulus of 36", Certainty.FromMemory)),
        new(VentricleRadius, Log, 0.58, 0.12, 0.38, 0.85, new("middle of the cavity 42 mm over an annulus of 36, as wide as the free wall lets it be thought round; it still holds less than is published, see docs/validation.md", Certainty.Assumption)),
        new(VentricleDip, Plain, 20, 10, -10, 50, new("the apex lies in front, to the left and a little below the valve", Certainty.Assumption)),
        new(HepaticVeinAngle, Plain, 63, 13, 30, 90, new("129 and 102 deg from the IVC towards the head in two stray cannulae, CT (JA Clin Rep 2022, s40981-022-00544-1); spread assumed", Certainty.Derived)),
        new(HepaticVeinAzimuth, Plain, 20, 20, -40, 80, new("enters the right wall, somewhat from behind", Certainty.Assumption)),
        new(HepaticVeinDiameter, Log, 0.65, 0.28, 0.3, 0.95, new("right hepatic vein median 15 mm (8 to 27) against 23 mm (15 to 30) of the IVC there, 69 livers", Certainty.Derived)),
        new(RightCavoIliacAngle, Plain, 153, 8, 125, 175, new("137.7 to 169.2 deg, CT series (repository.usmf.md 31387), taken as +- 2 SD", Certainty.Derived)),
        new(LeftCavoIliacAngle, Plain, 144, 10, 110, 172, new("124.1 to 163.1 deg, same series", Certainty.Derived)),
        new(IliacDiameter, Log, 1.10, 0.12, 0.8, 1.5, new("a little wider than the femoral vein", Certainty.Assumption)),
        new(PelvicSlope, Plain, 35, 8, 10, 60, new("over the rim of the pelvis to the front of the thigh", Certainty.Assumption)),
    ];

    /// <summary>The row of one dimension.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <returns>Its row.</returns>
    public static LumenParameter For(LumenDimension dimension) => Rows[(int)dimension];
}
