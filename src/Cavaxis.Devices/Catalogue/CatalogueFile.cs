using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.MembraneLungs;
using Cavaxis.Devices.Pumps;
using Cavaxis.Devices.Wires;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Catalogue;

/// <summary>The catalogue as JSON text. Reading and writing are inverse: a written catalogue reads back to the same devices.</summary>
public static class CatalogueFile
{
    /// <summary>Version of the format.</summary>
    public const int FormatVersion = 1;

    /// <summary>Longest text accepted, characters.</summary>
    public const int LongestText = 4_000_000;

    private const int DeepestNesting = 12;

    /// <summary>Reads a catalogue.</summary>
    /// <param name="json">The text of the file.</param>
    /// <returns>The catalogue.</returns>
    /// <exception cref="InputFaultException">The text is no catalogue; carries every fault found, each with its path.</exception>
    public static DeviceCatalogue Parse(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        if (json.Length > LongestText)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.FileTooLarge, "(the file)", $"{json.Length} characters", $"at most {LongestText} characters", "Split the catalogue."));
        }

        using JsonDocument document = Open(json);
        List<InputFault> faults = [];
        JsonFields fields = new(
            document.RootElement, string.Empty, faults, "format", "formatVersion", "version", "cannulae", "pumps", "membraneLungs", "wires");
        CheckFormat(fields, faults);
        string version = fields.Text("version", 40);
        IReadOnlyList<Cannula> cannulae = fields.List("cannulae", 0, 2000, (e, p) => CannulaJson.Read(e, p, faults));
        IReadOnlyList<CentrifugalPump> pumps = fields.List("pumps", 0, 500, (e, p) => CircuitJson.ReadPump(e, p, faults));
        IReadOnlyList<MembraneLung> lungs = fields.List("membraneLungs", 0, 500, (e, p) => CircuitJson.ReadLung(e, p, faults));
        IReadOnlyList<GuideWire> wires = fields.List("wires", 0, 500, (e, p) => CircuitJson.ReadWire(e, p, faults));
        return faults.Count > 0 ? throw new InputFaultException(faults) : new DeviceCatalogue(version, cannulae, pumps, lungs, wires);
    }

    /// <summary>Writes a catalogue as indented JSON with line feeds.</summary>
    /// <param name="catalogue">The catalogue.</param>
    /// <returns>The text, ending in a line feed.</returns>
    public static string Write(DeviceCatalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        using MemoryStream stream = new();
        JsonWriterOptions options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (Utf8JsonWriter writer = new(stream, options))
        {
            writer.WriteStartObject();
            writer.WriteString("format", "cavaxis.devices");
            writer.WriteNumber("formatVersion", FormatVersion);
            writer.WriteString("version", catalogue.Version);
            WriteList(writer, "cannulae", catalogue.Cannulae, CannulaJson.Write);
            WriteList(writer, "pumps", catalogue.Pumps, CircuitJson.Write);
            WriteList(writer, "membraneLungs", catalogue.MembraneLungs, CircuitJson.Write);
            WriteList(writer, "wires", catalogue.Wires, CircuitJson.Write);
            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void CheckFormat(JsonFields fields, List<InputFault> faults)
    {
        if (!fields.IsObject)
        {
            return;
        }

        string format = fields.Text("format", 40);
        if (format.Length > 0 && format != "cavaxis.devices")
        {
            faults.Add(new InputFault(FaultCode.NotAChoice, "format", InputFault.Shown(format), "cavaxis.devices", "Give a device catalogue."));
        }

        int version = fields.Whole("formatVersion", 1, 1_000_000);
        if (version != FormatVersion)
        {
            faults.Add(new InputFault(
                FaultCode.UnsupportedVersion, "formatVersion", $"{version}", $"{FormatVersion}", "Use a program that reads this version."));
        }
    }

    private static void WriteList<T>(Utf8JsonWriter writer, string name, IReadOnlyList<T> devices, Action<Utf8JsonWriter, T> write)
    {
        writer.WriteStartArray(name);
        foreach (T device in devices)
        {
            write(writer, device);
        }

        writer.WriteEndArray();
    }

    private static JsonDocument Open(string json)
    {
        try
        {
            return JsonDocument.Parse(json, new JsonDocumentOptions { MaxDepth = DeepestNesting });
        }
        catch (JsonException fault)
        {
            bool deep = fault.Message.Contains("maximum configured depth", StringComparison.OrdinalIgnoreCase);
            throw new InputFaultException(new InputFault(
                deep ? FaultCode.NestedTooDeep : FaultCode.MalformedText,
                "(the file)",
                InputFault.Shown(fault.Message),
                deep ? $"at most {DeepestNesting} levels" : "JSON text",
                "Correct the text at this place.",
                (int?)(fault.LineNumber + 1),
                (int?)(fault.BytePositionInLine + 1)));
        }
        catch (ArgumentException)
        {
            // Half a surrogate pair in the text cannot be turned into UTF-8.
            throw new InputFaultException(new InputFault(
                FaultCode.WrongEncoding, "(the file)", "half a surrogate pair", "Unicode text", "Save the file as UTF-8."));
        }
    }
}
