using System.Globalization;
using Hl7.Fhir.Model;

namespace Cavaxis.Bedside.Fhir;

/// <summary>Numbers with their unit in UCUM.</summary>
internal static class FhirQuantity
{
    private const string Ucum = "http://unitsofmeasure.org";

    /// <summary>A quantity.</summary>
    /// <param name="value">Value.</param>
    /// <param name="unit">Unit as people read it.</param>
    /// <param name="ucum">The same in UCUM.</param>
    /// <returns>The quantity; its decimal digits are those that read back to the same number.</returns>
    public static Quantity Of(double value, string unit, string ucum) => new()
    {
        Value = decimal.Parse(value.ToString("R", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture),
        Unit = unit,
        System = Ucum,
        Code = ucum,
    };
}
