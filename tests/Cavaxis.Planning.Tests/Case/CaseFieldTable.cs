using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Tests.Case;

/// <summary>The fields of the case file as Markdown tables, one a section, made from the schema.</summary>
public static class CaseFieldTable
{
    public static string Write(string schema)
    {
        JsonNode root = JsonNode.Parse(schema)!;
        StringBuilder text = new();
        Section(text, root, root, "(the file)", string.Empty);
        foreach ((string name, JsonNode? node) in root["properties"]!.AsObject())
        {
            if (Target(root, node!) is JsonNode section)
            {
                bool isList = node!.ToJsonString().Contains("\"array\"", StringComparison.Ordinal);
                Section(text, root, section, isList ? $"{name}[ ]" : name, node["description"]!.ToString());
                foreach ((string inner, JsonNode? list) in section["properties"]!.AsObject())
                {
                    // Lists of records inside a section; measurements are no sections of their own.
                    if (list!.ToJsonString().Contains("\"array\"", StringComparison.Ordinal) && Target(root, list) is JsonNode entry && entry["properties"] is not null)
                    {
                        Section(text, root, entry, $"{name}.{inner}[ ]", list["description"]!.ToString());
                    }
                }
            }
        }

        return text.ToString();
    }

    /// <summary>The range of each dimension of the axis, which the schema cannot tell.</summary>
    public static string Dimensions()
    {
        StringBuilder text = new("\n| dimension | accepted |\n|---|---|\n");
        foreach (AxisDimension dimension in Enum.GetValues<AxisDimension>())
        {
            AxisRange range = AxisRange.Of(dimension);
            string unit = range.Unit == "1" ? string.Empty : " " + range.Unit;
            text.Append(CultureInfo.InvariantCulture, $"| `{JsonNamingPolicy.CamelCase.ConvertName(dimension.ToString())}` | {range.Low} to {range.High}{unit} |\n");
        }

        return text.ToString();
    }

    private static void Section(StringBuilder text, JsonNode root, JsonNode section, string title, string meaning)
    {
        text.Append('\n').Append("### `").Append(title).Append("`\n\n");
        if (meaning.Length > 0)
        {
            text.Append(meaning).Append("\n\n");
        }

        text.Append("| field | takes | meaning |\n|---|---|---|\n");
        IEnumerable<string> required = section["required"]!.AsArray().Select(static r => r!.ToString());
        foreach ((string name, JsonNode? node) in section["properties"]!.AsObject())
        {
            string need = required.Contains(name) ? " (required)" : string.Empty;
            text.Append("| `").Append(name).Append('`').Append(need).Append(" | ").Append(Takes(root, node!))
                .Append(" | ").Append(node!["description"]).Append(" |\n");
        }
    }

    // The record that a section or the entries of a list refer to.
    private static JsonNode? Target(JsonNode root, JsonNode node)
    {
        JsonNode first = node["oneOf"]?[0] ?? node;
        string? reference = (first["$ref"] ?? first["items"]?["$ref"])?.ToString();
        return reference is null ? null : root["$defs"]![reference.Split('/')[^1]];
    }

    private static string Takes(JsonNode root, JsonNode node)
    {
        JsonNode[] ways = node["oneOf"] is JsonArray several ? [.. several.Select(static w => w!)] : [node];
        return string.Join(", ", ways.Select(way => Way(root, way)));
    }

    private static string Way(JsonNode root, JsonNode way) => way switch
    {
        JsonObject o when o.ContainsKey("const") => $"`\"{o["const"]}\"`",
        JsonObject o when o.ContainsKey("$ref") => "section",
        JsonObject o when o["enum"] is JsonArray words => string.Join(", ", words.Select(static w => $"`{w}`")),
        JsonObject o when o["type"]?.ToString() == "array" =>
            $"list of at most {o["maxItems"]}" + (o["items"]!["enum"] is null ? string.Empty : $": {Way(root, o["items"]!)}"),
        JsonObject o when o["type"]?.ToString() == "string" => $"text, at most {o["maxLength"]} characters",
        JsonObject o when o["type"]?.ToString() == "boolean" => "true or false",
        JsonObject o when o["type"]?.ToString() == "object" => "`{value, sd}`",
        JsonObject o when JsonNode.DeepEquals(o["minimum"], o["maximum"]) => $"{o["minimum"]}",
        JsonObject o => $"{o["minimum"]} to {o["maximum"]}",
        _ => throw new InvalidOperationException(way.ToJsonString()),
    };
}
