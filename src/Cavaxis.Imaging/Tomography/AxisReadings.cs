using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Landmarks;

namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// A traced axis as measurements of the population model, each with the error of its own reading and the edge that was taken; a proposed junction has
/// an unknown edge, which the model widens. How much a vein changes with breath and filling is not in these errors.
/// </summary>
public static class AxisReadings
{
    private const double DiameterFromMm = 4;
    private const double DiameterToMm = 30;

    /// <summary>A diameter differs along a vein, and one breath is not another: errors below this would say too much, mm (assumption of this project).</summary>
    private const double LeastDiameterSdMm = 0.5;

    /// <summary>A line square to which an offset is measured leans with the error of the axes, mm.</summary>
    private const double LeastOffsetSdMm = 2;

    /// <summary>Every measurement that the axis gives.</summary>
    /// <param name="axis">The axis.</param>
    /// <returns>None where nothing was found that the model knows.</returns>
    public static IReadOnlyList<AxisMeasurement> Of(TracedAxis axis)
    {
        ArgumentNullException.ThrowIfNull(axis);
        AxisLandmark superior = axis[CavalLandmark.Scaj];
        AxisLandmark inferior = axis[CavalLandmark.Icaj];
        List<AxisMeasurement> readings = [];
        if (axis.Directions is CavalDirections directions)
        {
            readings.Add(AxisMeasurement.Of(AxisDimension.AtrialSpan, directions.Trunk.Length, Both(superior, inferior), superior.Edge, inferior.Edge));
            AddBend(readings, AxisDimension.CavalBendFrontal, directions.BendFrontalDeg, directions.BendSdDeg);
            AddBend(readings, AxisDimension.CavalBendSagittal, directions.BendSagittalDeg, directions.BendSdDeg);
            double lean = directions.Trunk.Length * directions.BendSdDeg / 2 * Math.PI / 180;
            readings.Add(AxisMeasurement.Of(AxisDimension.MouthOffset, directions.MouthOffsetMm, Math.Sqrt((LeastOffsetSdMm * LeastOffsetSdMm) + (lean * lean))));
        }

        AddLength(readings, AxisDimension.SvcLength, axis[CavalLandmark.BrachiocephalicConfluence], superior);
        AddLength(readings, AxisDimension.IcajToHepaticVein, inferior, axis[CavalLandmark.HepaticVein]);
        AddLength(readings, AxisDimension.IcajToRenalVein, inferior, axis[CavalLandmark.RenalVein]);
        AddLength(readings, AxisDimension.RenalVeinToIliacConfluence, axis[CavalLandmark.RenalVein], axis[CavalLandmark.IliacConfluence]);
        if (superior.IsThere)
        {
            AddDiameter(readings, AxisDimension.SvcDiameter, axis, superior.ArcMm - DiameterToMm, superior.ArcMm - DiameterFromMm);
        }

        if (inferior.IsThere)
        {
            double end = axis[CavalLandmark.HepaticVein] is { IsThere: true } hepatic ? Math.Max(inferior.ArcMm + 10, hepatic.ArcMm) : inferior.ArcMm + DiameterToMm;
            AddDiameter(readings, AxisDimension.IvcDiameter, axis, inferior.ArcMm + DiameterFromMm, Math.Min(end, inferior.ArcMm + DiameterToMm));
        }

        return readings;
    }

    private static double Both(AxisLandmark one, AxisLandmark other) => Math.Sqrt((one.SdMm * one.SdMm) + (other.SdMm * other.SdMm));

    private static void AddBend(List<AxisMeasurement> readings, AxisDimension dimension, double bendDeg, double sdDeg)
    {
        // Beyond 60 degrees the model's way through the atrium is no longer a good curve; such a bend is shown and not handed on.
        if (Math.Abs(bendDeg) <= 60)
        {
            readings.Add(AxisMeasurement.Of(dimension, bendDeg, sdDeg));
        }
    }

    private static void AddLength(List<AxisMeasurement> readings, AxisDimension dimension, AxisLandmark from, AxisLandmark to)
    {
        if (from.IsThere && to.IsThere && to.ArcMm - from.ArcMm > 1)
        {
            JunctionEdge superior = from.Landmark == CavalLandmark.Scaj ? from.Edge : to.Landmark == CavalLandmark.Scaj ? to.Edge : JunctionEdge.Unknown;
            JunctionEdge inferior = from.Landmark == CavalLandmark.Icaj ? from.Edge : JunctionEdge.Unknown;
            readings.Add(AxisMeasurement.Of(dimension, to.ArcMm - from.ArcMm, Both(from, to), superior, inferior));
        }
    }

    private static void AddDiameter(List<AxisMeasurement> readings, AxisDimension dimension, TracedAxis axis, double fromMm, double toMm)
    {
        double[] diameters = [.. axis.Sections.Where(s => s.ArcMm >= fromMm && s.ArcMm <= toMm && s.OpenShare < 0.3).Select(static s => s.DiameterMm)];
        if (diameters.Length >= 3)
        {
            // The middle one: a branch or a stretch whose wall was lost must not widen the vein. The spread is of all, so that it shows in the error.
            double mean = diameters.Average();
            double spread = Math.Sqrt(diameters.Sum(d => (d - mean) * (d - mean)) / (diameters.Length - 1));
            readings.Add(AxisMeasurement.Of(
                dimension, Spread.Median(diameters), Math.Sqrt((axis.DiameterSdMm * axis.DiameterSdMm) + (spread * spread / 3) + (LeastDiameterSdMm * LeastDiameterSdMm))));
        }
    }
}
