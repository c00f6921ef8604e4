using System.Globalization;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Json;

namespace Cavaxis.Planning.Case;

/// <summary>Looks through a case for what is odd but possible. Notes stop nothing; reports show them.</summary>
public static class CaseNotes
{
    // Half-saturation tensions of living patients, acidosis, fever and abnormal haemoglobins included, mmHg. Assumption.
    private const double LeftmostP50 = 16;
    private const double RightmostP50 = 42;
    private const double SaturationSlackPercent = 4;

    private static readonly (VesselName Vessel, BodySide Side, AxisDimension Dimension)[] SameVessel =
    [
        (VesselName.InternalJugularVein, BodySide.Right, AxisDimension.RightJugularVeinDiameter),
        (VesselName.InternalJugularVein, BodySide.Left, AxisDimension.LeftJugularVeinDiameter),
        (VesselName.CommonFemoralVein, BodySide.Right, AxisDimension.RightFemoralVeinDiameter),
        (VesselName.CommonFemoralVein, BodySide.Left, AxisDimension.LeftFemoralVeinDiameter),
        (VesselName.CommonFemoralArtery, BodySide.Right, AxisDimension.RightFemoralArteryDiameter),
        (VesselName.CommonFemoralArtery, BodySide.Left, AxisDimension.LeftFemoralArteryDiameter),
        (VesselName.AxillaryArtery, BodySide.Right, AxisDimension.RightAxillaryArteryDiameter),
        (VesselName.AxillaryArtery, BodySide.Left, AxisDimension.LeftAxillaryArteryDiameter),
        (VesselName.CommonCarotidArtery, BodySide.Right, AxisDimension.RightCarotidArteryDiameter),
    ];

    /// <summary>All notes on a case, in the order of the format.</summary>
    /// <param name="file">A case free of faults.</param>
    /// <returns>Notes; empty when nothing is odd.</returns>
    public static IReadOnlyList<CaseNote> Of(CaseFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return [.. ArterialSaturation(file.Blood), .. VenousSaturation(file.Blood), .. MeasuredTwice(file)];
    }

    private static IEnumerable<CaseNote> ArterialSaturation(BloodSection blood)
    {
        if (blood is not { ArterialSaturationPercent.Value: double saturation, ArterialPo2MmHg.Value: double po2 })
        {
            yield break;
        }

        double low = SaturationPercent(po2, RightmostP50) - SaturationSlackPercent;
        double high = SaturationPercent(po2, LeftmostP50) + SaturationSlackPercent;
        if (saturation < low || saturation > high)
        {
            yield return new CaseNote("blood.arterialSaturationPercent", string.Create(
                CultureInfo.InvariantCulture,
                $"Saturation {saturation:0.#} % and PO2 {po2:0.#} mmHg hardly belong together: at this PO2 about {Math.Max(0, low):0} to {Math.Min(100, high):0} % is expected. Were both from one arterial sample? Carbon monoxide and methaemoglobin also part them."));
        }
    }

    private static IEnumerable<CaseNote> VenousSaturation(BloodSection blood)
    {
        if (blood is { ArterialSaturationPercent.Value: double arterial, VenousSaturationPercent.Value: double venous } && venous > arterial)
        {
            yield return new CaseNote("blood.venousSaturationPercent", string.Create(
                CultureInfo.InvariantCulture,
                $"Venous saturation {venous:0.#} % is above the arterial {arterial:0.#} %. Were the samples exchanged, or was the venous one drawn on support?"));
        }
    }

    private static IEnumerable<CaseNote> MeasuredTwice(CaseFile file)
    {
        foreach ((VesselName vessel, BodySide side, AxisDimension dimension) in SameVessel)
        {
            VesselEntry? survey = file.Vessels.FirstOrDefault(v => v.Vessel == vessel && v.Side == side);
            AxisEntry? axis = file.Axis.FirstOrDefault(a => a.Dimension == dimension);
            if (survey?.DiameterMm is { } diameter && axis is not null)
            {
                int index = file.Axis.ToList().IndexOf(axis);
                yield return new CaseNote(string.Create(CultureInfo.InvariantCulture, $"axis[{index}]"), string.Create(
                    CultureInfo.InvariantCulture,
                    $"{JsonName.Of(dimension.ToString())} is given here ({axis.Value:0.#} mm) and in the vessel survey ({diameter.Value:0.#} mm). Give it once, or be sure that these are two separate measurements."));
            }
        }
    }

    // Severinghaus 1979, J Appl Physiol 46:599, with the tension scaled to the curve's own half-saturation of 26.86 mmHg.
    private static double SaturationPercent(double po2MmHg, double p50MmHg)
    {
        double tension = po2MmHg * 26.86 / p50MmHg;
        return 100 / (1 + (23400 / ((tension * tension * tension) + (150 * tension))));
    }
}
