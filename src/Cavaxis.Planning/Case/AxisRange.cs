using Cavaxis.Anatomy.Axis;

namespace Cavaxis.Planning.Case;

/// <summary>
/// Which values of an axis dimension a case may give. The bounds hold every body from a small newborn to the largest
/// adult with room to spare (angles: every bend the model can draw); they catch a wrong unit or a slipped digit and say nothing about what is normal.
/// Assumption of this project.
/// </summary>
/// <param name="Low">Lowest accepted value.</param>
/// <param name="High">Highest accepted value.</param>
/// <param name="Unit">Unit in UCUM: mm, deg or 1.</param>
public sealed record AxisRange(double Low, double High, string Unit)
{
    /// <summary>True for a length or diameter that cannot be zero, so that an error above the value is a slip.</summary>
    public bool IsPositive => Low > 0;

    /// <summary>The range of a dimension.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <returns>Bounds and unit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a dimension.</exception>
    public static AxisRange Of(AxisDimension dimension) => dimension switch
    {
        AxisDimension.RightNeckSkinToScaj => Mm(15, 350),
        AxisDimension.SvcLength => Mm(10, 150),
        AxisDimension.AtrialSpan => Mm(10, 160),

        // Beyond 60 degrees the model's path through the atrium is no longer a good curve.
        AxisDimension.CavalBendFrontal or AxisDimension.CavalBendSagittal => new(-60, 60, "deg"),
        AxisDimension.MouthOffset => Mm(-60, 60),
        AxisDimension.IcajToHepaticVein => Mm(1, 120),
        AxisDimension.IcajToRenalVein => Mm(15, 300),
        AxisDimension.RenalVeinToIliacConfluence => Mm(10, 250),
        AxisDimension.RightGroinSkinToIcaj => Mm(50, 800),
        AxisDimension.LeftNeckExtra or AxisDimension.LeftGroinExtra => Mm(-60, 150),
        AxisDimension.TricuspidFraction => new(0, 1, "1"),
        AxisDimension.TricuspidDistance => Mm(0.5, 100),
        AxisDimension.TricuspidDiameter => Mm(5, 90),
        AxisDimension.SvcDiameter => Mm(2, 50),
        AxisDimension.IvcDiameter => Mm(2, 60),
        AxisDimension.RightJugularVeinDiameter or AxisDimension.LeftJugularVeinDiameter => Mm(0.5, 45),
        AxisDimension.RightFemoralVeinDiameter or AxisDimension.LeftFemoralVeinDiameter => Mm(0.5, 40),
        AxisDimension.RightFemoralArteryDiameter or AxisDimension.LeftFemoralArteryDiameter => Mm(0.5, 40),
        AxisDimension.RightAxillaryArteryDiameter or AxisDimension.LeftAxillaryArteryDiameter => Mm(0.5, 30),
        AxisDimension.RightCarotidArteryDiameter => Mm(0.5, 30),
        _ => throw new ArgumentOutOfRangeException(nameof(dimension), dimension, "Not a dimension of the axis."),
    };

    private static AxisRange Mm(double low, double high) => new(low, high, "mm");
}
