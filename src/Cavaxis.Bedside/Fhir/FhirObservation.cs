using System.Globalization;
using Cavaxis.Course.Observations;
using Hl7.Fhir.Model;

namespace Cavaxis.Bedside.Fhir;

/// <summary>Readings as observations.</summary>
internal static class FhirObservation
{
    private const string Loinc = "http://loinc.org";

    /// <summary>A reading.</summary>
    public static Observation Of(FhirReading reading, ResourceReference patient)
    {
        QuantityDefinition quantity = QuantityTable.Of(reading.Quantity);
        LoincCode? loinc = LoincTable.Find(reading.Quantity);
        Observation observation = new()
        {
            Status = ObservationStatus.Final,
            Code = new CodeableConcept { Text = quantity.Words, Coding = loinc is null ? [] : [new Coding(Loinc, loinc.Code, loinc.Display)] },
            Subject = patient,
            Effective = new FhirDateTime(reading.At),
            Value = FhirQuantity.Of(reading.Value, quantity.Unit, quantity.Ucum),
        };
        if (loinc is { IsVitalSign: true })
        {
            observation.Category.Add(new CodeableConcept("http://terminology.hl7.org/CodeSystem/observation-category", "vital-signs"));
        }

        if (loinc?.Profile is string profile)
        {
            observation.Meta = new Meta { Profile = [profile] };
        }

        if (reading.Sd is double sd)
        {
            observation.Note.Add(new Annotation { Text = string.Create(CultureInfo.InvariantCulture, $"Standard deviation of the reading: {sd} {quantity.Unit}") });
        }

        return observation;
    }
}
