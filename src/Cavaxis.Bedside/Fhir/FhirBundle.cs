using System.Globalization;
using Cavaxis.Anatomy.Body;
using Cavaxis.Quantities.Faults;
using Hl7.Fhir.Model;

namespace Cavaxis.Bedside.Fhir;

/// <summary>A FHIR R4 bundle of a patient's support: Patient, a Device and a Procedure for each cannula (and one for its removal), an Observation for each reading. No link leads to any network.</summary>
public static class FhirBundle
{
    /// <summary>Where support starts in a de-identified bundle.</summary>
    public static DateTimeOffset MovedStart { get; } = new(2000, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private const string LocalSystem = "urn:cavaxis:patient";

    /// <summary>Makes it.</summary>
    /// <param name="record">What it is made of.</param>
    /// <returns>The bundle, of the type collection.</returns>
    /// <exception cref="InputFaultException">Two cannulae share a name, or a number is not finite.</exception>
    public static Bundle Of(FhirRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        Refuse(record);
        TimeSpan moved = record.LocalId is null ? MovedStart - record.SupportStart : TimeSpan.Zero;
        FhirNames names = new(record.BundleId);
        Bundle bundle = new() { Id = record.BundleId.ToString("D"), Type = Bundle.BundleType.Collection };
        if (record.LocalId is null)
        {
            // The moment of making would tell, with the moved times, when support was.
            bundle.Meta = new Meta { Security = [new Coding("http://terminology.hl7.org/CodeSystem/v3-ObservationValue", "ANONYED", "anonymized")] };
        }
        else
        {
            bundle.Timestamp = record.MadeAt;
        }

        bundle.AddResourceEntry(PatientOf(record), names.Url("patient"));
        foreach (FhirCannula cannula in record.Cannulae)
        {
            Add(bundle, names, cannula, moved);
        }

        int number = 0;
        foreach (FhirReading reading in record.Readings)
        {
            bundle.AddResourceEntry(FhirObservation.Of(reading with { At = reading.At + moved }, names.Reference("patient")), names.Url(string.Create(CultureInfo.InvariantCulture, $"observation {++number}")));
        }

        return bundle;
    }

    private static Patient PatientOf(FhirRecord record)
    {
        Patient patient = new()
        {
            Gender = record.Sex switch { Sex.Female => AdministrativeGender.Female, Sex.Male => AdministrativeGender.Male, _ => AdministrativeGender.Unknown },
        };
        if (record.LocalId is string id)
        {
            patient.Identifier.Add(new Identifier(LocalSystem, id));
        }

        return patient;
    }

    private static void Add(Bundle bundle, FhirNames names, FhirCannula cannula, TimeSpan moved)
    {
        string device = $"device {cannula.Name}";
        bundle.AddResourceEntry(FhirDevice.Of(cannula, names.Reference("patient")), names.Url(device));
        bundle.AddResourceEntry(
            FhirDevice.Procedure(cannula, "cannulation for extracorporeal support", "implanted", cannula.PlacedAt + moved, names.Reference("patient"), names.Reference(device)),
            names.Url($"placed {cannula.Name}"));
        if (cannula.RemovedAt is DateTimeOffset removed)
        {
            bundle.AddResourceEntry(
                FhirDevice.Procedure(cannula, "removal of a cannula for extracorporeal support", "explanted", removed + moved, names.Reference("patient"), names.Reference(device)),
                names.Url($"removed {cannula.Name}"));
        }
    }

    private static void Refuse(FhirRecord record)
    {
        if (record.Cannulae.GroupBy(static c => c.Name, StringComparer.Ordinal).FirstOrDefault(static g => g.Count() > 1) is { Key: string twice })
        {
            throw new InputFaultException(new InputFault(FaultCode.Contradiction, "cannulae", InputFault.Shown(twice), "each name once", "Tell the cannulae apart by name."));
        }

        if (record.Readings.FirstOrDefault(static r => !double.IsFinite(r.Value) || Math.Abs(r.Value) > 1e9) is FhirReading wrong)
        {
            throw new InputFaultException(new InputFault(FaultCode.OutOfRange, wrong.Quantity.ToString(), wrong.Value.ToString("R", CultureInfo.InvariantCulture), "a finite number", "Check the reading."));
        }
    }
}
