using System.Reflection;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Images;

/// <summary>Checks a measured value against the range of the field of the case that takes it.</summary>
internal static class FieldRange
{
    /// <summary>The value as the field holds it.</summary>
    /// <param name="section">Type that has the field.</param>
    /// <param name="property">Name of the field.</param>
    /// <param name="value">Value, in the field's unit.</param>
    /// <param name="sd">Its standard deviation.</param>
    /// <returns>A measurement whose error is given.</returns>
    /// <exception cref="InputFaultException">The value is outside the range that the case accepts.</exception>
    public static Measurement Measured(Type section, string property, double value, double sd)
    {
        NumberAttribute range = section.GetProperty(property)!.GetCustomAttribute<NumberAttribute>()!;
        _ = Require.InRange(value, range.Low, range.High, JsonName.Of(property), "A case does not take this value: check the points, the calibration and what was measured.");
        return new Measurement(value, sd, SdGiven: true);
    }
}
