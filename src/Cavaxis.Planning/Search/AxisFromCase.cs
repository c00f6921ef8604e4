using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Population;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Information;

namespace Cavaxis.Planning.Search;

/// <summary>Conditions the population axis on what the case measured.</summary>
internal static class AxisFromCase
{
    private const double ErrorWhenNothingIsKnownMm = 10;

    /// <summary>The axis of this patient.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="habitus">Size of the patient.</param>
    /// <returns>The conditioned distribution.</returns>
    public static AxisDistribution Distribution(CaseFile caseFile, BodyHabitus habitus)
    {
        NeckEntry neck = caseFile.Access.NeckEntry switch
        {
            NeckEntryHeight.MidNeck => NeckEntry.MidNeck,
            NeckEntryHeight.LowNeck => NeckEntry.LowNeck,
            _ => NeckEntry.Unknown,
        };
        return PopulationModel.For(habitus, neck).Given(Measurements(caseFile));
    }

    private static List<AxisMeasurement> Measurements(CaseFile caseFile)
    {
        List<AxisMeasurement> measurements = [];
        foreach (AxisEntry entry in caseFile.Axis)
        {
            double sd = entry.Sd ?? (UsualMeasurement.Of(entry.Dimension)?.Sd ?? ErrorWhenNothingIsKnownMm) * Doubt(entry.Method);
            measurements.Add(new AxisMeasurement(
                [new AxisTerm(entry.Dimension, 1)], entry.Value, sd, entry.SuperiorEdge, entry.InferiorEdge));
        }

        foreach (VesselEntry entry in caseFile.Vessels)
        {
            if (entry.DiameterMm is { } diameter && AccessVessels.DimensionOf(entry.Vessel, entry.Side) is AxisDimension dimension)
            {
                measurements.Add(new AxisMeasurement([new AxisTerm(dimension, 1)], diameter.Value, diameter.Sd));
            }
        }

        return measurements;
    }

    /// <summary>How much a method's error exceeds that of the usual one, where the case does not give the error itself.</summary>
    private static double Doubt(AxisMethod method) => method switch
    {
        AxisMethod.Ct or AxisMethod.Mri => 1,
        AxisMethod.TransoesophagealEcho or AxisMethod.WireLength => 1.25,
        AxisMethod.TransthoracicEcho or AxisMethod.Fluoroscopy => 1.75,
        _ => 2.5,
    };
}
