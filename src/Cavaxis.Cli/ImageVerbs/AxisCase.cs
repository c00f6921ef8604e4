using System.Text.Json;
using System.Text.Json.Nodes;
using Cavaxis.Cli.Commands;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>Measurements of a traced axis in a case file.</summary>
internal static class AxisCase
{
    /// <summary>A case with the measurements in place of those of the same dimensions; all else stays as it was typed.</summary>
    /// <param name="path">The case.</param>
    /// <param name="entries">The measurements.</param>
    /// <returns>The new file.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">The case cannot be used, before or after.</exception>
    public static byte[] With(string path, IReadOnlyList<AxisEntry> entries)
    {
        _ = CaseInput.Read(path);
        JsonObject root = JsonNode.Parse(File.ReadAllBytes(path))!.AsObject();
        JsonArray kept = [];
        HashSet<string> measured = [.. entries.Select(static e => JsonName.Of(e.Dimension.ToString()))];
        foreach (JsonNode? node in root["axis"] as JsonArray ?? [])
        {
            if (!measured.Contains((string?)node?["dimension"] ?? string.Empty))
            {
                kept.Add(node?.DeepClone());
            }
        }

        foreach (AxisEntry entry in entries)
        {
            kept.Add(JsonSerializer.SerializeToNode(entry, CavaxisJson.Options));
        }

        root["axis"] = kept;
        byte[] written = JsonSerializer.SerializeToUtf8Bytes(root, CavaxisJson.Options);
        _ = CaseFileReader.Read(written, Path.GetFileName(path));
        return written;
    }
}
