using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Images;

/// <summary>What a measurement on an image says in a case: the value and its own error, in the field's unit. The case has no room for provenance; the record keeps it.</summary>
public static class CaseEntries
{
    /// <summary>No scan tells a length to less than a tenth of a millimetre, or a bend to less than a tenth of a degree.</summary>
    private const int Decimals = 1;

    /// <summary>A diameter of an access vessel.</summary>
    /// <param name="diameter">A distance, or a depth of motion, mm.</param>
    /// <param name="vessel">Which vessel.</param>
    /// <param name="side">Which side.</param>
    /// <returns>An entry of the survey.</returns>
    /// <exception cref="InputFaultException">Another kind of measurement, or a value that no such vessel has.</exception>
    public static VesselEntry Vessel(ImageMeasurement diameter, VesselName vessel, BodySide side)
    {
        Require(diameter, "diameter", MeasurementKind.Distance, MeasurementKind.MotionDepth);
        return new VesselEntry { Vessel = vessel, Side = side, DiameterMm = FieldRange.Measured(typeof(VesselEntry), nameof(VesselEntry.DiameterMm), diameter.Value.Value, diameter.Value.Sd) };
    }

    /// <summary>The depth of an access vessel.</summary>
    /// <param name="depth">The distance from the skin to its middle, mm.</param>
    /// <param name="vessel">Which vessel.</param>
    /// <param name="side">Which side.</param>
    /// <returns>An entry of the survey.</returns>
    /// <exception cref="InputFaultException">Another kind of measurement, or a depth that no such vessel has.</exception>
    public static VesselEntry VesselDepth(ImageMeasurement depth, VesselName vessel, BodySide side)
    {
        Require(depth, "depth", MeasurementKind.Distance, MeasurementKind.MotionDepth);
        return new VesselEntry { Vessel = vessel, Side = side, DepthMm = FieldRange.Measured(typeof(VesselEntry), nameof(VesselEntry.DepthMm), depth.Value.Value, depth.Value.Sd) };
    }

    /// <summary>A dimension of the cavo-atrial axis.</summary>
    /// <param name="measured">A length in mm for a length or diameter, an angle in degrees for a bend.</param>
    /// <param name="dimension">Which dimension.</param>
    /// <param name="method">How the image was made.</param>
    /// <param name="superior">Edge taken as the superior junction.</param>
    /// <param name="inferior">Edge taken as the inferior junction.</param>
    /// <param name="isNegative">True where the dimension has a sign and it is negative: an image has none.</param>
    /// <returns>An entry of the axis.</returns>
    /// <exception cref="InputFaultException">The unit does not fit, the value is out of range, or the dimension has no sign.</exception>
    public static AxisEntry Axis(
        ImageMeasurement measured, AxisDimension dimension, AxisMethod method, JunctionEdge superior = JunctionEdge.Unknown, JunctionEdge inferior = JunctionEdge.Unknown, bool isNegative = false)
    {
        ArgumentNullException.ThrowIfNull(measured);
        AxisRange range = AxisRange.Of(dimension);
        if (measured.Unit != range.Unit)
        {
            throw new InputFaultException(new InputFault(FaultCode.WrongKind, "dimension", measured.Unit, range.Unit, "Choose the dimension that was measured."));
        }

        // An angle on the image is that between the two arms; a bend is what is missing to a straight line.
        double size = measured.Kind == MeasurementKind.Angle ? 180 - measured.Value.Value : measured.Value.Value;
        double value = Quantities.Faults.Require.InRange(
            isNegative ? -size : size, range.Low, range.High, "axis.value", "A case does not take this value for this dimension: check the points, the sign and what was measured.");
        return new AxisEntry { Dimension = dimension, Value = value, Sd = measured.Value.Sd, Method = method, SuperiorEdge = superior, InferiorEdge = inferior };
    }

    /// <summary>What a traced axis says of the cavo-atrial axis: one entry a dimension, to a tenth, as a person would type it.</summary>
    /// <param name="axis">The axis.</param>
    /// <returns>None where nothing was found that the model knows.</returns>
    public static IReadOnlyList<AxisEntry> Axis(TracedAxis axis) =>
    [
        .. AxisReadings.Of(axis).Where(static r => r.Single is not null).Select(static r => new AxisEntry
        {
            Dimension = r.Single!.Value,
            Value = Math.Round(r.Value, Decimals),
            Sd = Math.Round(Math.Max(r.Sd, AxisMeasurement.SmallestSd), Decimals),
            Method = AxisMethod.Ct,
            SuperiorEdge = r.SuperiorEdge,
            InferiorEdge = r.InferiorEdge,
        }),
    ];

    /// <summary>Findings of the heart with the diameter of the outflow tract.</summary>
    /// <param name="heart">As it stands in the case.</param>
    /// <param name="diameter">Diameter of the outflow tract, mm.</param>
    /// <returns>The same with that diameter.</returns>
    /// <exception cref="InputFaultException">Another kind of measurement, or out of range.</exception>
    public static HeartSection OutflowDiameter(HeartSection heart, ImageMeasurement diameter)
    {
        ArgumentNullException.ThrowIfNull(heart);
        Require(diameter, "diameter", MeasurementKind.Distance);
        return heart with { LvotDiameterMm = Of(nameof(HeartSection.LvotDiameterMm), diameter) };
    }

    /// <summary>Findings of the heart with what a spectrum of the outflow tract told.</summary>
    /// <param name="heart">As it stands in the case.</param>
    /// <param name="measured">Integral, rate or output.</param>
    /// <returns>The same with that value.</returns>
    /// <exception cref="InputFaultException">Another kind of measurement, or out of range.</exception>
    public static HeartSection Flow(HeartSection heart, ImageMeasurement measured)
    {
        ArgumentNullException.ThrowIfNull(heart);
        Require(measured, "measured", MeasurementKind.VelocityTimeIntegral, MeasurementKind.BeatRate, MeasurementKind.Output);
        return measured.Kind switch
        {
            MeasurementKind.VelocityTimeIntegral => heart with { LvotVtiCm = Of(nameof(HeartSection.LvotVtiCm), measured) },
            MeasurementKind.BeatRate => heart with { RatePerMin = Of(nameof(HeartSection.RatePerMin), measured) },
            _ => heart with { CardiacOutputLPerMin = Of(nameof(HeartSection.CardiacOutputLPerMin), measured) },
        };
    }

    private static Measurement Of(string property, ImageMeasurement measured) => FieldRange.Measured(typeof(HeartSection), property, measured.Value.Value, measured.Value.Sd);

    private static void Require(ImageMeasurement measured, string field, params MeasurementKind[] kinds)
    {
        ArgumentNullException.ThrowIfNull(measured);
        if (!kinds.Contains(measured.Kind))
        {
            throw new InputFaultException(new InputFault(FaultCode.WrongKind, field, measured.Kind.ToString(), string.Join(", ", kinds), "Choose the field that takes this kind of measurement."));
        }
    }
}
