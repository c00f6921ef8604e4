using System.Text.Json.Nodes;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Course.Events;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Images;

/// <summary>Which fields of a case a measurement on an image can fill, and with what. Values and their bounds are those of <see cref="CaseEntries"/>.</summary>
public static class CaseTargets
{
    private const string Heart = "heart.";

    private static readonly bool[] DiameterThenDepth = [false, true];
    private static readonly bool[] BothSigns = [false, true];
    private static readonly bool[] OneSign = [false];
    private static readonly BodySide[] RightThenLeft = [BodySide.Right, BodySide.Left];

    /// <summary>The fields that a measurement can fill.</summary>
    /// <param name="measured">The measurement.</param>
    /// <returns>The fields, the likeliest first; none where the case has no room for such a number.</returns>
    public static IReadOnlyList<CaseTarget> For(ImageMeasurement measured)
    {
        ArgumentNullException.ThrowIfNull(measured);
        return measured.Kind switch
        {
            MeasurementKind.Distance => [.. Vessels(measured), Of(measured, nameof(HeartSection.LvotDiameterMm), "outflow tract of the left ventricle, diameter"), .. Axis(measured)],
            MeasurementKind.MotionDepth => [.. Vessels(measured)],
            MeasurementKind.CurvedDistance or MeasurementKind.Angle => [.. Axis(measured)],
            MeasurementKind.VelocityTimeIntegral => [Of(measured, nameof(HeartSection.LvotVtiCm), "outflow tract of the left ventricle, velocity-time integral")],
            MeasurementKind.BeatRate => [Of(measured, nameof(HeartSection.RatePerMin), "heart rate")],
            MeasurementKind.Output => [Of(measured, nameof(HeartSection.CardiacOutputLPerMin), "cardiac output")],
            _ => [],
        };
    }

    /// <summary>What is written into the case.</summary>
    /// <param name="target">The field, one of those that <see cref="For"/> gave.</param>
    /// <param name="modality">How the image was made.</param>
    /// <returns>Value, error and paths; nothing is written yet.</returns>
    /// <exception cref="InputFaultException">A case does not take this value for this field.</exception>
    public static CaseFilling Fill(CaseTarget target, ImagingModality modality)
    {
        ArgumentNullException.ThrowIfNull(target);
        if (target.Dimension is AxisDimension dimension)
        {
            AxisMethod method = MethodOf(modality);
            AxisEntry entry = CaseEntries.Axis(target.Measured, dimension, method, isNegative: target.IsNegative);
            (double value, double sd) = Rounded(entry.Value, entry.Sd ?? 0);
            return new CaseFilling(target, value, sd,
            [
                (target.Path, JsonValue.Create(value)),
                (CaseTarget.PathOf(dimension, "sd"), JsonValue.Create(sd)),
                (CaseTarget.PathOf(dimension, "method"), method == AxisMethod.Unknown ? null : JsonValue.Create(JsonName.Of(method.ToString()))),

                // An edge that was said belonged to the measurement before.
                (CaseTarget.PathOf(dimension, "superiorEdge"), null),
                (CaseTarget.PathOf(dimension, "inferiorEdge"), null),
            ]);
        }

        Measurement number = target switch
        {
            { Vessel: (VesselName vessel, BodySide side), IsDepth: true } => CaseEntries.VesselDepth(target.Measured, vessel, side).DepthMm!,
            { Vessel: (VesselName vessel, BodySide side) } => CaseEntries.Vessel(target.Measured, vessel, side).DiameterMm!,
            { Measured.Kind: MeasurementKind.Distance } => CaseEntries.OutflowDiameter(new HeartSection(), target.Measured).LvotDiameterMm!,
            _ => OfFlow(CaseEntries.Flow(new HeartSection(), target.Measured)),
        };
        (double rounded, double error) = Rounded(number.Value, number.Sd);
        return new CaseFilling(target, rounded, error, [(target.Path, new JsonObject { ["value"] = rounded, ["sd"] = error })]);
    }

    /// <summary>How an axis was measured, from how the image was made; unknown where the case has no word for it.</summary>
    /// <param name="modality">How the image was made.</param>
    /// <returns>The word of the case.</returns>
    public static AxisMethod MethodOf(ImagingModality modality) => modality switch
    {
        ImagingModality.ComputedTomography => AxisMethod.Ct,
        ImagingModality.MagneticResonance => AxisMethod.Mri,
        ImagingModality.TransoesophagealUltrasound => AxisMethod.TransoesophagealEcho,
        ImagingModality.TransthoracicUltrasound => AxisMethod.TransthoracicEcho,
        ImagingModality.Fluoroscopy => AxisMethod.Fluoroscopy,
        _ => AxisMethod.Unknown,
    };

    private static Measurement OfFlow(HeartSection heart) => (heart.LvotVtiCm ?? heart.RatePerMin ?? heart.CardiacOutputLPerMin)!;

    private static CaseTarget Of(ImageMeasurement measured, string property, string words) => new(Heart + JsonName.Of(property), words, measured.Unit) { Measured = measured };

    private static IEnumerable<CaseTarget> Vessels(ImageMeasurement measured) =>
        from depth in DiameterThenDepth
        from vessel in Enum.GetValues<VesselName>()
        from side in RightThenLeft
        select new CaseTarget(
            CaseTarget.PathOf(vessel, side, JsonName.Of(depth ? nameof(VesselEntry.DepthMm) : nameof(VesselEntry.DiameterMm))),
            $"{PlainWords.Side(side)} {PlainWords.FromName(vessel.ToString())}, {(depth ? "depth under the skin" : "diameter")}", measured.Unit)
        { Measured = measured, Vessel = (vessel, side), IsDepth = depth };

    private static IEnumerable<CaseTarget> Axis(ImageMeasurement measured) =>
        from dimension in Enum.GetValues<AxisDimension>()
        let range = AxisRange.Of(dimension)
        where range.Unit == measured.Unit && !VesselDiameters.Contains(dimension)
        from negative in range.Low < 0 ? BothSigns : OneSign
        select new CaseTarget(CaseTarget.PathOf(dimension, "value"), $"axis: {PlainWords.FromName(dimension.ToString())}{(range.Low < 0 ? negative ? ", negative" : ", positive" : string.Empty)}", range.Unit)
        { Measured = measured, Dimension = dimension, IsNegative = negative };

    /// <summary>They stand among the vessels, where they have a side and a depth.</summary>
    private static readonly HashSet<AxisDimension> VesselDiameters =
    [
        AxisDimension.RightJugularVeinDiameter, AxisDimension.LeftJugularVeinDiameter, AxisDimension.RightFemoralVeinDiameter, AxisDimension.LeftFemoralVeinDiameter,
        AxisDimension.RightFemoralArteryDiameter, AxisDimension.LeftFemoralArteryDiameter, AxisDimension.RightAxillaryArteryDiameter, AxisDimension.LeftAxillaryArteryDiameter,
        AxisDimension.RightCarotidArteryDiameter,
    ];

    /// <summary>As many digits as the error leaves: two of the standard deviation's.</summary>
    private static (double Value, double Sd) Rounded(double value, double sd)
    {
        int digits = sd > 0 ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(sd)), 0, 4) : 2;
        return (Math.Round(value, digits), Math.Round(sd, digits));
    }
}
