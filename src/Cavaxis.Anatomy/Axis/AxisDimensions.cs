namespace Cavaxis.Anatomy.Axis;

/// <summary>All dimensions of the axis and the scale of each.</summary>
public static class AxisDimensions
{
    /// <summary>Every dimension in the order of its number.</summary>
    public static IReadOnlyList<AxisDimension> All { get; } = Enum.GetValues<AxisDimension>();

    /// <summary>Number of dimensions.</summary>
    public static int Count => All.Count;

    /// <summary>The scale on which a dimension is Gaussian: plain for angles, fractions and signed
    /// differences.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <returns>Its scale.</returns>
    public static LatentScale ScaleOf(AxisDimension dimension) => dimension switch
    {
        AxisDimension.LeftNeckExtra or AxisDimension.LeftGroinExtra or AxisDimension.MouthOffset
            or AxisDimension.CavalBendFrontal or AxisDimension.CavalBendSagittal or AxisDimension.TricuspidFraction => LatentScale.Plain,
        _ => LatentScale.Logarithmic,
    };

    /// <summary>Unit of a dimension as reports print it.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <returns>"mm", "deg" or "1".</returns>
    public static string UnitOf(AxisDimension dimension) => dimension switch
    {
        AxisDimension.CavalBendFrontal or AxisDimension.CavalBendSagittal => "deg",
        AxisDimension.TricuspidFraction => "1",
        _ => "mm",
    };
}
