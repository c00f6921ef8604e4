using System.Text.Json.Nodes;

namespace Cavaxis.Planning.Json;

/// <summary>Writes JSON Schema (draft 2020-12) from the same types and attributes that read and write the files.</summary>
public static class SchemaWriter
{
    private const string Draft = "https://json-schema.org/draft/2020-12/schema";

    /// <summary>Schema of an input record as <see cref="RecordBinder{T}"/> reads it.</summary>
    /// <typeparam name="T">The input record.</typeparam>
    /// <param name="title">Title of the schema.</param>
    /// <returns>Schema text ending with a line feed.</returns>
    public static string Input<T>(string title)
        where T : class => Text(title, new InputSchema(), typeof(T));

    /// <summary>Schema of a result as <see cref="CavaxisJson.Options"/> writes it.</summary>
    /// <typeparam name="T">The result.</typeparam>
    /// <param name="title">Title of the schema.</param>
    /// <returns>Schema text ending with a line feed.</returns>
    public static string Output<T>(string title)
        where T : class => Text(title, new OutputSchema(), typeof(T));

    private static string Text(string title, SchemaRoom room, Type type)
    {
        JsonObject root = new() { ["$schema"] = Draft, ["title"] = title };
        foreach ((string name, JsonNode? node) in room.Root(type))
        {
            root[name] = node?.DeepClone();
        }

        if (room.Definitions is { Count: > 0 } definitions)
        {
            root["$defs"] = definitions;
        }

        return root.ToJsonString(CavaxisJson.Options) + "\n";
    }
}
