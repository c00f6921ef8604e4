using System.Text.Json;
using Cavaxis.Planning.Configurations;
using Hl7.Fhir.Model;

namespace Cavaxis.Bedside.Fhir;

/// <summary>Cannulae as devices, and what was done with them.</summary>
internal static class FhirDevice
{
    /// <summary>A cannula as a generic device: words and numbers, no maker, no model, no lot.</summary>
    public static Device Of(FhirCannula cannula, ResourceReference patient)
    {
        Device device = new()
        {
            Status = cannula.RemovedAt is null ? Device.FHIRDeviceStatus.Active : Device.FHIRDeviceStatus.Inactive,
            Type = new CodeableConcept { Text = $"{Words(cannula.Role)}, generic" },
            Patient = patient,
        };
        if (cannula.OuterDiameterFrench is double french)
        {
            device.Property.Add(Property("outer diameter", FhirQuantity.Of(french, "Fr", "[Ch]")));
        }

        if (cannula.DepthCm is double depth)
        {
            device.Property.Add(Property("depth at the skin", FhirQuantity.Of(depth, "cm", "cm")));
        }

        return device;
    }

    /// <summary>Placing or taking out.</summary>
    public static Procedure Procedure(FhirCannula cannula, string words, string action, DateTimeOffset at, ResourceReference patient, ResourceReference device)
    {
        Procedure procedure = new()
        {
            Status = EventStatus.Completed,
            Code = new CodeableConcept { Text = words },
            Subject = patient,
            Performed = new FhirDateTime(at),
            FocalDevice = [new Procedure.FocalDeviceComponent { Action = new CodeableConcept("http://hl7.org/fhir/device-action", action), Manipulated = device }],
        };
        if (cannula.Site is string site)
        {
            procedure.BodySite.Add(new CodeableConcept { Text = site });
        }

        return procedure;
    }

    private static string Words(CannulaRole role) => role switch
    {
        CannulaRole.Drainage => "drainage cannula",
        CannulaRole.VenousReturn => "venous return cannula",
        CannulaRole.ArterialReturn => "arterial return cannula",
        _ => $"cannula ({JsonNamingPolicy.CamelCase.ConvertName(role.ToString())})",
    };

    private static Device.PropertyComponent Property(string words, Quantity value) => new() { Type = new CodeableConcept { Text = words }, ValueQuantity = [value] };
}
