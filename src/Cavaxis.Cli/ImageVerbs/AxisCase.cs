using System.Text.Json;
using System.Text.Json.Nodes;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Cli.Commands;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Json;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>Measurements of a traced axis in a case file.</summary>
internal static class AxisCase
{
    /// <summary>The measurements as a person would type them.</summary>
    /// <param name="axis">The axis.</param>
    /// <returns>One a dimension, to a tenth.</returns>
    public static IReadOnlyList<AxisEntry> Entries(TracedAxis axis) =>
    [
        .. AxisReadings.Of(axis).Where(static r => r.Single is not null).Select(static r => new AxisEntry
        {
            Dimension = r.Single!.Value,
            Value = Math.Round(r.Value, 1),
            Sd = Math.Round(Math.Max(r.Sd, AxisMeasurement.SmallestSd), 1),
            Method = AxisMethod.Ct,
            SuperiorEdge = r.SuperiorEdge,
            InferiorEdge = r.InferiorEdge,
        }),
    ];

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
