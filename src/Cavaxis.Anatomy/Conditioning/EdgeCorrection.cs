using Cavaxis.Anatomy.Axis;

namespace Cavaxis.Anatomy.Conditioning;

/// <summary>
/// Carries a measurement from the edges it was taken at to the model's own edges. An edge lying p below the own edge
/// makes a distance measured down to it longer by p and one measured down from it shorter by p; in a sum the steps
/// cancel where the junction lies inside the way.
/// </summary>
internal static class EdgeCorrection
{
    /// <summary>Value and standard deviation at the model's own edges.</summary>
    /// <param name="measurement">The measurement.</param>
    /// <param name="bodyScale">Height against the reference adult: the steps between edges shrink with the
    /// body.</param>
    /// <param name="spanMm">Expected atrial span, which turns a step in mm into a step of the tricuspid
    /// fraction.</param>
    public static (double Value, double Sd) ToOwnEdges(AxisMeasurement measurement, double bodyScale, double spanMm)
    {
        double superiorWeight = 0;
        double inferiorWeight = 0;
        foreach (AxisTerm term in measurement.Terms)
        {
            (double superior, double inferior) = Weights(term.Dimension, measurement.Value, spanMm);
            superiorWeight += term.Weight * superior;
            inferiorWeight += term.Weight * inferior;
        }

        EdgeDefinition above = JunctionEdges.Superior(measurement.SuperiorEdge);
        EdgeDefinition below = JunctionEdges.Inferior(measurement.InferiorEdge);
        double step = bodyScale * ((superiorWeight * above.BelowOwnEdgeMm) + (inferiorWeight * below.BelowOwnEdgeMm));
        double superiorSd = bodyScale * superiorWeight * above.SdMm;
        double inferiorSd = bodyScale * inferiorWeight * below.SdMm;
        double sd = Math.Sqrt((measurement.Sd * measurement.Sd) + (superiorSd * superiorSd) + (inferiorSd * inferiorSd));
        return (measurement.Value - step, sd);
    }

    // How the measured number changes per millimetre that the superior and the inferior edge lie below the own edge.
    private static (double Superior, double Inferior) Weights(AxisDimension dimension, double value, double spanMm) => dimension switch
    {
        AxisDimension.RightNeckSkinToScaj or AxisDimension.SvcLength => (1, 0),
        AxisDimension.AtrialSpan => (-1, 1),
        AxisDimension.IcajToHepaticVein or AxisDimension.IcajToRenalVein or AxisDimension.RightGroinSkinToIcaj => (0, -1),
        // The centre stays while the line moves: f' = (f L − p)/(L + q − p), to first order in p and q.
        AxisDimension.TricuspidFraction => ((value - 1) / spanMm, -value / spanMm),
        _ => (0, 0),
    };
}
