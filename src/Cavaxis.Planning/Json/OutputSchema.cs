using System.Reflection;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Json;

/// <summary>
/// Schema of results. The properties are asked from the serializer itself, so that the schema cannot name what is not
/// written. Every property is always written; what may be null says so.
/// </summary>
internal sealed class OutputSchema : SchemaRoom
{
    /// <inheritdoc/>
    protected override JsonObject ObjectOf(Type type)
    {
        JsonObject properties = [];
        JsonTypeInfo info = CavaxisJson.Options.GetTypeInfo(type);
        if (info.Kind != JsonTypeInfoKind.Object)
        {
            throw new NotSupportedException($"{type.Name} is not written as an object.");
        }

        foreach (JsonPropertyInfo property in info.Properties.Where(static p => p.Get is not null))
        {
            JsonObject node = property.IsGetNullable ? OrNull(Of(property.PropertyType)) : Of(property.PropertyType);
            if (Meaning(property.AttributeProvider) is string meaning)
            {
                node["description"] = meaning;
            }

            properties[property.Name] = node;
        }

        JsonObject schema = new() { ["type"] = "object" };
        if (Meaning(type) is string text)
        {
            schema["description"] = text;
        }

        schema["required"] = new JsonArray([.. properties.Select(static p => (JsonNode)JsonValue.Create(p.Key))]);
        schema["properties"] = properties;
        schema["additionalProperties"] = false;
        return schema;
    }

    private JsonObject Of(Type written)
    {
        if (Nullable.GetUnderlyingType(written) is Type inner)
        {
            return OrNull(Of(inner));
        }

        if (written.IsEnum)
        {
            return Refer(written, JsonName.Of(written.Name), () => Words(JsonName.WordsOf(written)));
        }

        if (Simple(written) is string simple)
        {
            return new JsonObject { ["type"] = simple };
        }

        if (ArgumentsOf(written, typeof(IReadOnlyDictionary<,>)) is [Type key, Type value])
        {
            JsonObject map = new() { ["type"] = "object", ["additionalProperties"] = Of(value) };
            if (key.IsEnum)
            {
                map["propertyNames"] = Of(key);
            }

            return map;
        }

        return ArgumentsOf(written, typeof(IEnumerable<>)) is [Type item]
            ? new JsonObject { ["type"] = "array", ["items"] = Of(item) }
            : Refer(written, JsonName.Of(written.Name.Split('`')[0]), () => ObjectOf(written));
    }

    private static JsonObject OrNull(JsonObject node) =>
        node.ContainsKey("anyOf") ? node : new() { ["anyOf"] = new JsonArray(node, new JsonObject { ["type"] = "null" }) };

    private static string? Simple(Type type) => Type.GetTypeCode(type) switch
    {
        TypeCode.Boolean => "boolean",
        TypeCode.String => "string",
        TypeCode.Double or TypeCode.Single or TypeCode.Decimal => "number",
        TypeCode.Int32 or TypeCode.Int64 or TypeCode.UInt32 or TypeCode.UInt64 or TypeCode.Int16 or TypeCode.UInt16 or TypeCode.Byte => "integer",
        _ => null,
    };

    private static Type[]? ArgumentsOf(Type type, Type contract) =>
        type.GetInterfaces().Append(type)
            .FirstOrDefault(i => i.IsGenericType && i.GetGenericTypeDefinition() == contract)?.GetGenericArguments();

    private static string? Meaning(ICustomAttributeProvider? provider) =>
        provider?.GetCustomAttributes(typeof(MeaningAttribute), inherit: true).OfType<MeaningAttribute>().FirstOrDefault()?.Text;
}
