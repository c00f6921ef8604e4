using Cavaxis.Anatomy.Axis;
using static Cavaxis.Anatomy.Axis.AxisDimension;

namespace Cavaxis.Planning.Information;

/// <summary>How each dimension of the axis is usually measured and how far such a measurement is usually off.</summary>
/// <param name="Dimension">The dimension.</param>
/// <param name="How">The usual way, in words.</param>
/// <param name="Sd">Standard deviation of that measurement (assumption of this project, docs/models/value-of-information.md).</param>
/// <param name="Unit">Unit of the deviation.</param>
public sealed record UsualMeasurement(AxisDimension Dimension, string How, double Sd, string Unit)
{
    private const string Ct = "contrast CT, or transoesophageal ultrasound in the bicaval view";
    private const string Vascular = "vascular ultrasound at the puncture site";

    /// <summary>Every dimension that a person can measure before the procedure.</summary>
    public static IReadOnlyList<UsualMeasurement> All { get; } =
    [
        new(RightNeckSkinToScaj, "CT, or a wire of known length seen at the junction on ultrasound", 6, "mm"),
        new(LeftNeckExtra, "CT", 6, "mm"),
        new(SvcLength, Ct, 5, "mm"),
        new(AtrialSpan, Ct, 4, "mm"),
        new(CavalBendFrontal, "CT in the frontal plane", 4, "deg"),
        new(CavalBendSagittal, "CT in the sagittal plane, or transoesophageal ultrasound in the bicaval view", 4, "deg"),
        new(MouthOffset, "CT", 2, "mm"),
        new(IcajToHepaticVein, "subcostal or transoesophageal ultrasound", 3, "mm"),
        new(IcajToRenalVein, "CT", 6, "mm"),
        new(RenalVeinToIliacConfluence, "CT", 6, "mm"),
        new(RightGroinSkinToIcaj, "CT, or a wire of known length seen at the junction on ultrasound", 8, "mm"),
        new(LeftGroinExtra, "CT", 6, "mm"),
        new(TricuspidFraction, Ct, 0.04, "1"),
        new(TricuspidDistance, Ct, 3, "mm"),
        new(TricuspidDiameter, "ultrasound, four-chamber view", 2, "mm"),
        new(RightJugularVeinDiameter, Vascular, 0.7, "mm"),
        new(LeftJugularVeinDiameter, Vascular, 0.7, "mm"),
        new(RightFemoralVeinDiameter, Vascular, 0.7, "mm"),
        new(LeftFemoralVeinDiameter, Vascular, 0.7, "mm"),
        new(RightFemoralArteryDiameter, Vascular, 0.5, "mm"),
        new(LeftFemoralArteryDiameter, Vascular, 0.5, "mm"),
        new(RightAxillaryArteryDiameter, Vascular, 0.5, "mm"),
        new(LeftAxillaryArteryDiameter, Vascular, 0.5, "mm"),
    ];

    /// <summary>The usual measurement of a dimension, or null where none is usual.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <returns>The usual measurement, or null.</returns>
    public static UsualMeasurement? Of(AxisDimension dimension) => All.FirstOrDefault(usual => usual.Dimension == dimension);
}
