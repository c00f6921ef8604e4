using System.Text.Json.Nodes;

namespace Cavaxis.Planning.Json;

/// <summary>Gathers the definitions of the types a schema refers to, sorted by name.</summary>
internal abstract class SchemaRoom
{
    private readonly SortedDictionary<string, JsonObject?> _definitions = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Type> _owners = new(StringComparer.Ordinal);

    /// <summary>The definitions gathered so far.</summary>
    public JsonObject Definitions
    {
        get
        {
            JsonObject definitions = [];
            foreach ((string name, JsonObject? node) in _definitions)
            {
                definitions[name] = node?.DeepClone();
            }

            return definitions;
        }
    }

    /// <summary>Schema of the outermost object.</summary>
    /// <param name="type">Its type.</param>
    public JsonObject Root(Type type) => ObjectOf(type);

    /// <summary>Schema of an object type, written in full.</summary>
    /// <param name="type">The type.</param>
    protected abstract JsonObject ObjectOf(Type type);

    /// <summary>A reference to a definition, which is made on first use.</summary>
    /// <param name="type">Type the definition stands for; tells two types of one name apart.</param>
    /// <param name="name">Name of the definition.</param>
    /// <param name="make">Makes it.</param>
    protected JsonObject Refer(Type type, string name, Func<JsonObject> make)
    {
        if (_owners.TryGetValue(name, out Type? owner) && owner != type)
        {
            return Refer(type, $"{name}2", make);
        }

        if (_owners.TryAdd(name, type))
        {
            // Reserved first, so that a type that holds itself ends in a reference.
            _definitions[name] = null;
            _definitions[name] = make();
        }

        return new JsonObject { ["$ref"] = $"#/$defs/{name}" };
    }

    /// <summary>An enumeration of words.</summary>
    /// <param name="words">The words.</param>
    protected static JsonObject Words(IEnumerable<string> words) =>
        new() { ["enum"] = new JsonArray([.. words.Select(static w => (JsonNode)JsonValue.Create(w))]) };
}
