using Cavaxis.Anatomy.Axis;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Plans;
using Cavaxis.Web.Entry;
using Cavaxis.Web.Frame;

namespace Cavaxis.Web.Pages.Ways;

/// <summary>Where a measurement that is still missing is written down.</summary>
internal static class MeasurementField
{
    /// <summary>The measurement as a step that leads to its field.</summary>
    /// <param name="value">What the measurement would do.</param>
    /// <param name="patient">Identifier of the patient.</param>
    public static LookNext Next(MeasurementValue value, string patient) => new(
        $"Measure {PlainWords.FromName(value.Dimension.ToString())}", Address(value.Dimension, patient));

    /// <summary>Address of the field on the page of what is known.</summary>
    /// <param name="dimension">Dimension of the axis.</param>
    /// <param name="patient">Identifier of the patient.</param>
    public static string Address(AxisDimension dimension, string patient) => $"patient/{patient}/know?field={Uri.EscapeDataString(EntryForm.PathOf(dimension))}";
}
