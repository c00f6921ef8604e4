using System.Text.Json;
using Cavaxis.Quantities.Faults;
using Hl7.Fhir.Model;
using Hl7.Fhir.Serialization;

namespace Cavaxis.Bedside.Fhir;

/// <summary>FHIR JSON, written and strictly read by the library.</summary>
public static class FhirJson
{
    /// <summary>Largest file that is read, bytes.</summary>
    public const int LargestFile = 64 * 1024 * 1024;

    private static readonly JsonSerializerOptions Options = new JsonSerializerOptions { WriteIndented = true, NewLine = "\n" }.ForFhir(ModelInfo.ModelInspector).UsingMode(DeserializationMode.Strict);

    /// <summary>Writes a bundle.</summary>
    /// <param name="bundle">The bundle.</param>
    /// <returns>JSON.</returns>
    public static string Write(Bundle bundle) => JsonSerializer.Serialize(bundle, Options);

    /// <summary>Reads a bundle and accepts nothing that the standard does not know.</summary>
    /// <param name="json">JSON.</param>
    /// <returns>The bundle.</returns>
    /// <exception cref="InputFaultException">It is none.</exception>
    public static Bundle Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        try
        {
            return json.Length <= LargestFile && JsonSerializer.Deserialize<Bundle>(json, Options) is Bundle bundle ? bundle : throw Refused("not a bundle");
        }
        catch (Exception e) when (e is DeserializationFailedException or JsonException or InvalidOperationException)
        {
            throw Refused("not valid FHIR R4");
        }
    }

    private static InputFaultException Refused(string found) => new(new InputFault(
        FaultCode.MalformedText, "bundle", found, "a FHIR R4 bundle in JSON", "Have it written again by a program that follows the standard."));
}
