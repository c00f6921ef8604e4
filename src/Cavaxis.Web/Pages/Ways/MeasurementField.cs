using Cavaxis.Anatomy.Axis;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;
using Cavaxis.Web.Frame;

namespace Cavaxis.Web.Pages.Ways;

/// <summary>Where a measurement that is still missing is written down.</summary>
internal static class MeasurementField
{
    private static readonly string[] Vessels = ["JugularVein", "FemoralVein", "FemoralArtery", "AxillaryArtery", "CarotidArtery"];

    /// <summary>The measurement as a step that leads to its field.</summary>
    /// <param name="value">What the measurement would do.</param>
    /// <param name="patient">Identifier of the patient.</param>
    public static LookNext Next(MeasurementValue value, string patient) => new(
        $"Measure {PlainWords.FromName(value.Dimension.ToString())}", Address(value.Dimension, patient));

    /// <summary>Address of the field on the page of what is known.</summary>
    /// <param name="dimension">Dimension of the axis.</param>
    /// <param name="patient">Identifier of the patient.</param>
    public static string Address(AxisDimension dimension, string patient) => $"patient/{patient}/know?field={Uri.EscapeDataString(PathOf(dimension))}";

    /// <summary>Path of the field in the case. Diameters of access vessels are written into the survey of the vessels.</summary>
    /// <param name="dimension">Dimension of the axis.</param>
    public static string PathOf(AxisDimension dimension)
    {
        string name = dimension.ToString();
        foreach (string side in (string[])["Right", "Left"])
        {
            foreach (string vessel in Vessels)
            {
                if (name == $"{side}{vessel}Diameter")
                {
                    string full = vessel switch { "JugularVein" => "InternalJugularVein", "AxillaryArtery" => vessel, _ => "Common" + vessel };
                    return $"vessels[vessel={JsonName.Of(full)},side={JsonName.Of(side)}].diameterMm";
                }
            }
        }

        return $"axis[dimension={JsonName.Of(name)}].value";
    }
}
